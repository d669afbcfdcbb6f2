/** What is drawn in place of everything else: the Big card, or the page that only watches. */

import { effect } from '@preact/signals';
import { createElement, render } from 'preact';
import { bigCard, watching, whole } from '../board/places';
import { withWords } from '../parts/catalogues';

/** Begins to draw it; call once. */
export async function startWhole(): Promise<void> {
  if (watching) {
    const { Watch } = await withWords(() => import('../views/card/Watch'));
    const page = document.getElementById('app');
    if (page !== null) render(createElement(Watch, null), page);
    return;
  }
  const { Card } = await withWords(() => import('../views/card/Card'));
  effect(() => {
    whole.value = bigCard.value ? Card : null;
  });
}
