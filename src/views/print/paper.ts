/** The sheet of paper beside the app, which only a printer sees. */

import { type JSX, render } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import styles from './Print.module.css';

/**
 * Renders the printout beside the app, where only a printer sees it, as long as the sheet is open.
 */
export function usePaper(printed: JSX.Element | null): void {
  const [paper] = useState(() => document.createElement('div'));
  useEffect(() => {
    paper.className = `lapstrip-printed ${styles.page} ${styles.paper}`;
    paper.dataset.theme = 'day';
    document.body.append(paper);
    document.documentElement.dataset.paper = '';
    return () => {
      delete document.documentElement.dataset.paper;
      render(null, paper);
      paper.remove();
    };
  }, []);
  useEffect(() => render(printed, paper), [printed]);
}
