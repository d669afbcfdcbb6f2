/** Printing a procedure: a preview, with today's numbers or room for them. */

import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { listedBy } from '../../board/documents/documents';
import { nameLang } from '../../board/language';
import type { Hash, Procedure } from '../../core';
import { theme } from '../../device/preferences';
import { Choice } from '../../parts/choice/Choice';
import { Key } from '../../parts/key/Key';
import { marked } from '../../parts/marked';
import { Sheet } from '../../parts/sheet/Sheet';
import { Cards } from './Cards';
import { todaysFacts, todayText, versionSaid } from './heads';
import styles from './Print.module.css';
import { usePaper } from './paper';
import { words } from './words';

type Filling = 'filled' | 'blank';

/** The sheet for a listed procedure. */
export function PrintSheet({ hash, onClose }: { hash: Hash; onClose: () => void }): JSX.Element {
  const listed = listedBy(hash);
  const [procedure, setProcedure] = useState<Procedure | 'failed' | null>(null);
  const [filling, setFilling] = useState<Filling>('filled');
  useEffect(() => {
    if (listed?.kind !== 'procedure') setProcedure('failed');
    else listed.load().then(setProcedure, () => setProcedure('failed'));
  }, [hash]);
  const cards =
    procedure === null || procedure === 'failed' ? null : (
      <Cards
        procedure={procedure}
        facts={filling === 'blank' ? null : todaysFacts()}
        head={[versionSaid(hash), ...(filling === 'filled' ? todayText() : [])]}
      />
    );
  usePaper(cards);
  return (
    <Sheet
      title={marked(nameLang(listed), words.title, listed?.name ?? '')}
      close={words.close}
      size="page"
      onClose={onClose}
    >
      <p class={styles.hint}>{words.hint}</p>
      <Choice
        label={words.numbers}
        options={[
          { value: 'filled', name: words.filled },
          { value: 'blank', name: words.blank },
        ]}
        chosen={filling}
        onChoose={setFilling}
      />
      <div class={styles.keys}>
        <Key look="pick" disabled={cards === null} onPress={() => print()}>
          {words.print}
        </Key>
      </div>
      {procedure === 'failed' && <p>{words.failed}</p>}
      <details class={styles.preview} open={theme.value !== 'night'}>
        <summary>{words.preview}</summary>
        <div class={styles.paper}>{cards}</div>
      </details>
    </Sheet>
  );
}
