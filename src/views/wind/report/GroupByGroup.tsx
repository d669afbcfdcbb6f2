/** A report, group by group: what stands there, and what it means. */

import type { JSX } from 'preact';
import { day } from '../../../board/board';
import type { Report } from '../../../core';
import { Sheet } from '../../../parts/sheet/Sheet';
import { spanWords } from '../entry/MeaningAtCaret';
import styles from './GroupByGroup.module.css';
import { words } from './meaningWords';

interface GroupByGroupProps {
  readonly report: Report;
  readonly onClose: () => void;
}

/** The sheet. */
export function GroupByGroup({ report, onClose }: GroupByGroupProps): JSX.Element {
  const text = day.reportText() ?? '';
  return (
    <Sheet title={words.title} close={words.close} size="page" onClose={onClose}>
      <dl>
        {report.spans.map((span) => (
          <div key={span.at[0]} class={styles.group}>
            <dt class={styles.code}>{text.slice(...span.at)}</dt>
            <dd class={span.kind === 'unread' ? styles.unread : undefined}>{spanWords(span)}</dd>
          </div>
        ))}
      </dl>
    </Sheet>
  );
}
