/** What is drawn instead of everything else: the Big card, or the page that only watches. */

import { effect } from '@preact/signals';
import { render } from 'preact';
import { bigCard, inFront, watching } from '../board/places';
import { Boundary } from '../parts/boundary/Boundary';
import { withWords } from '../parts/catalogues';
import { broken } from './views';

/** Starts drawing it; call once. */
export async function startWhole(): Promise<void> {
  if (watching) {
    const { Watch } = await withWords(() => import('../views/card/Watch'));
    const page = document.getElementById('app');
    if (page === null) return;
    render(
      <Boundary
        fallback={(again) => <broken.Later part="whole" onAgain={again} onWithout={stopWatching} />}
      >
        <Watch />
      </Boundary>,
      page,
    );
    return;
  }
  const { Card } = await withWords(() => import('../views/card/Card'));
  effect(() => {
    inFront.value = bigCard.value ? Card : null;
  });
}

/** Opens the app itself in the window of the page that watches. */
function stopWatching(): void {
  history.replaceState(null, '', location.pathname);
  location.reload();
}
