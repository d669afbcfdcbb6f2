/**
 * The drawing board: taps draw, a selected point is dragged, two fingers and the wheel move the
 * plan; keys do all of it too.
 */

import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { type ChangedPlaces, draftStrips, type Field } from '../../core';
import { Key } from '../../parts/key/Key';
import { useGestures } from '../../parts/plan/gestures';
import {
  fitted,
  type GroundPoint,
  moved,
  type Pixel,
  type Sight,
  type Size,
  toGround,
  toPixel,
} from '../../parts/plan/projection';
import styles from './Board.module.css';
import { Drawn } from './Drawn';
import {
  choose,
  chosen,
  marks,
  moveChosen,
  pen,
  removeChosen,
  type Spot,
  spotOfChosen,
  tapAt,
  tool,
} from './hand';
import { Picture } from './Picture';
import { handling, movePicture, picture, placeAt } from './trace';
import { words } from './words';

/** The width of a finger: anything nearer to the tap may be meant, px. */
const FINGER_PX = 24;

/** Minimum margin at the edges, px. */
const MARGIN_PX = 40;

/** How far an arrow key moves a point, metres; with Shift, the second. */
const STEP_M = 5;
const FINE_STEP_M = 1;

const ARROWS: Readonly<Partial<Record<string, readonly [east: number, north: number]>>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

const GROWTH: Readonly<Partial<Record<string, number>>> = { '+': 1.25, '=': 1.25, '-': 0.8 };

const spotOf = ({ eastM, northM }: GroundPoint): Spot => ({ xM: eastM, yM: northM });

/** The board; it fills what it is given. */
export function DrawingBoard({ field }: { readonly field: Field }): JSX.Element {
  const holder = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState<Size>({ width: 0, height: 0 });
  const [own, setOwn] = useState<Sight | null>(null);
  const [dragged, setDragged] = useState<Spot | null>(null);
  const drags = useRef(false);
  useEffect(() => {
    const element = holder.current;
    if (element === null) return;
    const observer = new ResizeObserver(() =>
      setSize({ width: element.clientWidth, height: element.clientHeight }),
    );
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  const strips = draftStrips(field);
  const sight = own ?? fitted(wholeOf(field, strips), 0, size, MARGIN_PX);
  const middle = { x: size.width / 2, y: size.height / 2 };
  const marked = marks.value;
  useEffect(() => {
    if (marked === null || size.width === 0) return;
    setOwn(showing(marked, sight, size));
    holder.current?.scrollIntoView({ block: 'nearest' });
  }, [marked, size.width]);

  // Laid out for the board as it then was, it mustn't shift when more is drawn.
  const laid = picture.value;
  useEffect(() => {
    if (laid !== null && size.width > 0) setOwn(sight);
  }, [laid, size.width]);

  const isHandled = handling.value.kind !== 'none';
  useEffect(() => {
    if (isHandled) holder.current?.scrollIntoView({ block: 'nearest' });
  }, [isHandled]);

  const tap = (at: Pixel) => {
    // What grows while being drawn must not shrink under the hand.
    setOwn(sight);
    if (handling.value.kind === 'places') return placeAt(toGround(at, sight, size));
    tapAt(spotOf(toGround(at, sight, size)), FINGER_PX / sight.pxPerM);
  };
  const turn = (growth: number) => setOwn(moved(sight, size, middle, middle, growth));

  const gestures = useGestures({
    onMove: (from, to, growth) => {
      if (handling.value.kind === 'moves')
        movePicture(toGround(from, sight, size), toGround(to, sight, size), growth);
      else if (drags.current && growth === 1) setDragged(spotOf(toGround(to, sight, size)));
      else setOwn(moved(sight, size, from, to, growth));
    },
    onTap: tap,
  });
  const onPointerDown = (event: PointerEvent & { currentTarget: Element }) => {
    const { left, top } = event.currentTarget.getBoundingClientRect();
    const spot = tool.value === 'choose' && !isHandled ? spotOfChosen(field) : null;
    const at = spot && toPixel({ eastM: spot.xM, northM: spot.yM }, sight, size);
    drags.current =
      at !== null &&
      Math.hypot(event.clientX - left - at.x, event.clientY - top - at.y) <= FINGER_PX;
    gestures.onPointerDown(event);
  };
  const onPointerUp = (event: PointerEvent) => {
    gestures.onPointerUp(event);
    if (dragged !== null) {
      setOwn(sight);
      moveChosen(dragged);
    }
    setDragged(null);
    drags.current = false;
  };

  const onKeyDown = (event: KeyboardEvent) => {
    const { key } = event;
    const arrow = ARROWS[key];
    const growth = GROWTH[key];
    const spot = tool.value === 'choose' ? spotOfChosen(field) : null;
    const moves = handling.value.kind === 'moves';
    if (moves && (arrow !== undefined || growth !== undefined)) {
      const step = event.shiftKey ? FINE_STEP_M : STEP_M;
      const [east, north] = arrow ?? [0, 0];
      const at = toGround(middle, sight, size);
      const to = { eastM: at.eastM + east * step, northM: at.northM + north * step };
      movePicture(at, to, arrow === undefined ? (growth ?? 1) ** 0.1 : 1);
    } else if (arrow !== undefined && spot !== null) {
      const step = event.shiftKey ? FINE_STEP_M : STEP_M;
      moveChosen({ xM: spot.xM + arrow[0] * step, yM: spot.yM + arrow[1] * step });
    } else if (arrow !== undefined) {
      const to = { x: middle.x - 40 * arrow[0], y: middle.y + 40 * arrow[1] };
      setOwn(moved(sight, size, middle, to, 1));
    } else if (growth !== undefined) turn(growth);
    else if (key === 'Enter' || key === ' ') tap(middle);
    else if (key === 'Delete' || key === 'Backspace') removeChosen();
    else if (key === 'Escape' && (chosen.value !== null || pen.value !== null)) choose(null);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };

  return (
    <div class={styles.holder} ref={holder}>
      <section
        class={styles.surface}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: everything on it is done by keys too.
        tabIndex={0}
        onKeyDown={onKeyDown}
        {...gestures}
        onPointerDown={onPointerDown}
        onPointerUp={onPointerUp}
        aria-label={words.plan(field.name || field.code)}
      >
        {size.width > 0 && laid !== null && <Picture of={laid} view={{ sight, size }} />}
        {size.width > 0 && (
          <Drawn field={field} strips={strips} view={{ sight, size }} dragged={dragged} />
        )}
      </section>
      <div class={styles.keys}>
        <Key label={words.larger} onPress={() => turn(1.5)}>
          +
        </Key>
        <Key label={words.smaller} onPress={() => turn(1 / 1.5)}>
          −
        </Key>
        {own !== null && <Key onPress={() => setOwn(null)}>{words.whole}</Key>}
      </div>
    </div>
  );
}

/** Around what is marked, metres: where it is must be seen too. */
const AROUND_M = 100;

/** The sight that shows what is marked: as it is, if it does. */
function showing({ spots, lines }: ChangedPlaces, sight: Sight, size: Size): Sight {
  const points = [...spots, ...lines.flat()];
  const isSeen = (point: GroundPoint) => {
    const { x, y } = toPixel(point, sight, size);
    const isIn = (at: number, extent: number) => at >= MARGIN_PX && at <= extent - MARGIN_PX;
    return isIn(x, size.width) && isIn(y, size.height);
  };
  if (points.every(isSeen)) return sight;
  const around = points.flatMap(({ eastM, northM }) => [
    { eastM: eastM - AROUND_M, northM: northM - AROUND_M },
    { eastM: eastM + AROUND_M, northM: northM + AROUND_M },
  ]);
  const whole = fitted(around, sight.upDeg, size, MARGIN_PX);
  return { ...whole, pxPerM: Math.min(whole.pxPerM, sight.pxPerM) };
}

/** The least extent around the reference point while nothing is drawn yet, metres. */
const EMPTY_M = 400;

function wholeOf(
  { taxi }: Field,
  strips: readonly { readonly ends: readonly { readonly at: GroundPoint }[] }[],
): readonly GroundPoint[] {
  const points = [
    ...strips.flatMap(({ ends }) => ends.map(({ at }) => at)),
    ...taxi.nodes.map(({ xM, yM }) => ({ eastM: xM, northM: yM })),
  ];
  if (points.length > 1) return points;
  return [
    { eastM: -EMPTY_M, northM: -EMPTY_M },
    { eastM: EMPTY_M, northM: EMPTY_M },
  ];
}
