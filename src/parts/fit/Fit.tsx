/**
 * Letters as large as their box allows, by measuring: nothing is cut, and no word broken if
 * avoidable.
 */

import type { ComponentChildren, JSX } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { largestThatFits } from './largestThatFits';

/**
 * Below the first, rem, words are broken rather than set smaller; below the second, px, nothing is
 * legible.
 */
const READABLE_REM = 1.5;
const LEAST_PX = 12;

interface FitProps {
  /** Changes with anything that may change how much room the text needs. */
  readonly of: string;
  /** The box to fill; its size must not depend on the text. */
  readonly className: string | undefined;
  /** Upper bound of the font size, px; if absent, the height of the box. */
  readonly mostPx?: number;
  /** Screen readers get its content elsewhere. */
  readonly silent?: boolean;
  readonly children: ComponentChildren;
}

/** A box filled with text; sizes inside are in em. */
export function Fit({ of, className, mostPx, silent, children }: FitProps): JSX.Element {
  const box = useRef<HTMLDivElement>(null);
  const text = useRef<HTMLDivElement>(null);
  const fit = () => {
    const [holder, written] = [box.current, text.current];
    if (holder !== null && written !== null) fill(holder, written, mostPx);
  };
  useLayoutEffect(fit, [of, mostPx]);
  useLayoutEffect(() => {
    const sizes = new ResizeObserver(fit);
    if (box.current !== null) sizes.observe(box.current);
    document.fonts.addEventListener('loadingdone', fit);
    return () => {
      sizes.disconnect();
      document.fonts.removeEventListener('loadingdone', fit);
    };
  }, []);
  return (
    <div ref={box} class={className} aria-hidden={silent} data-fit>
      <div ref={text} data-fitted>
        {children}
      </div>
    </div>
  );
}

function fill(box: HTMLElement, text: HTMLElement, mostPx = box.clientHeight): void {
  const remPx = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
  const style = getComputedStyle(box);
  const pad = (...sides: readonly string[]) =>
    sides.reduce((sum, side) => sum + Number.parseFloat(side), 0);
  const width = box.clientWidth - pad(style.paddingLeft, style.paddingRight);
  const height = box.clientHeight - pad(style.paddingTop, style.paddingBottom);
  const fits = (px: number) => {
    text.style.fontSize = `${px}px`;
    return text.scrollWidth <= Math.ceil(width) && text.offsetHeight <= height;
  };
  text.style.display = 'block';
  text.style.overflowWrap = 'normal';
  if (!fits(READABLE_REM * remPx)) text.style.overflowWrap = 'anywhere';
  text.style.fontSize = `${largestThatFits(fits, LEAST_PX, Math.max(mostPx, remPx))}px`;
}
