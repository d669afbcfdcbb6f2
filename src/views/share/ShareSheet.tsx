/**
 * Sharing a document: as a file, as a link that contains all of it, as the QR code of that link.
 */

import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useId, useState } from 'preact/hooks';
import { listedBy } from '../../board/documents/documents';
import { type Shared, shared } from '../../board/documents/sharing';
import { nameLang } from '../../board/language';
import type { Hash } from '../../core';
import { canShare, copyText, openShareSheet, saveFile } from '../../device/files';
import { LONGEST_LINK } from '../../exchange/link';
import { wholeNumber } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import { marked } from '../../parts/marked';
import { Sheet } from '../../parts/sheet/Sheet';
import type { qrCodeOf } from './qrCode';
import styles from './Share.module.css';
import { words } from './words';

/** The sheet for a listed document. */
export function ShareSheet({ hash, onClose }: { hash: Hash; onClose: () => void }): JSX.Element {
  const listed = listedBy(hash);
  const [document, setDocument] = useState<Shared | 'failed' | null>(null);
  useEffect(() => {
    if (listed === undefined) setDocument('failed');
    else shared(listed).then(setDocument, () => setDocument('failed'));
  }, [hash]);
  return (
    <Sheet
      title={marked(nameLang(listed), words.title, listed?.name ?? '')}
      close={words.close}
      onClose={onClose}
    >
      {document === null && <p>{words.loading}</p>}
      {document === 'failed' && <p>{words.failed}</p>}
      {document !== null && document !== 'failed' && (
        <WaysOut document={document} lang={nameLang(listed)} />
      )}
    </Sheet>
  );
}

interface WaysOutProps {
  readonly document: Shared;
  /** The `lang` of its name. */
  readonly lang: string | undefined;
}

/** The ways a document can be given away. */
export const WaysOut = ({ document, lang }: WaysOutProps): JSX.Element => (
  <>
    <p class={styles.hint}>{words.hint}</p>
    <FilePart document={document} />
    <LinkPart document={document} />
    <CodePart document={document} lang={lang} />
  </>
);

function Part({ title, children }: { title: string; children: ComponentChildren }) {
  return (
    <section class={styles.part}>
      <h3 class={styles.title}>{title}</h3>
      {children}
    </section>
  );
}

function FilePart({ document: { file, name } }: { document: Shared }) {
  const sheet = { files: [file], title: name };
  return (
    <Part title={words.file}>
      <div class={styles.keys}>
        <Key onPress={() => saveFile(file)}>{words.save}</Key>
        {canShare(sheet) && <Key onPress={() => void openShareSheet(sheet)}>{words.shareFile}</Key>}
      </div>
    </Part>
  );
}

function LinkPart({ document: { links, name } }: { document: Shared }) {
  const { link, fits } = links;
  const [copied, setCopied] = useState<boolean | null>(null);
  const sheet = { url: link, title: name };
  const length = wholeNumber(link.length);
  return (
    <Part title={words.link}>
      {fits ? (
        <>
          <p>{words.linkHint(length)}</p>
          <div class={styles.keys}>
            <Key onPress={() => void copyText(link).then(setCopied)}>{words.copy}</Key>
            {canShare(sheet) && (
              <Key onPress={() => void openShareSheet(sheet)}>{words.shareLink}</Key>
            )}
          </div>
        </>
      ) : (
        <p>{words.linkTooLong(length, wholeNumber(LONGEST_LINK))}</p>
      )}
      <div role="status">{copied !== null && <p>{copied ? words.copied : words.notCopied}</p>}</div>
      {copied === false && (
        <textarea class={styles.link} aria-label={words.link} readOnly value={link} />
      )}
    </Part>
  );
}

function CodePart({ document: { links, name }, lang }: WaysOutProps) {
  const id = useId();
  const { codes } = links;
  const [part, setPart] = useState(0);
  const [draw, setDraw] = useState<typeof qrCodeOf | 'failed' | null>(null);
  const show = () =>
    import('./qrCode').then(
      (loaded) => setDraw(() => loaded.qrCodeOf),
      () => setDraw('failed'),
    );
  const text = codes[part];
  const code =
    typeof draw === 'function' && text !== undefined ? draw(text.before, text.digits) : null;
  return (
    <Part title={words.code}>
      {codes.length === 0 && <p>{words.tooLarge}</p>}
      {codes.length > 0 && draw === null && (
        <>
          <p>{codes.length === 1 ? words.bright : words.brightCodes(codes.length)}</p>
          <div class={styles.keys}>
            <Key onPress={() => void show()}>{words.showCode}</Key>
          </div>
        </>
      )}
      {draw === 'failed' && <p>{words.failed}</p>}
      {typeof draw === 'function' && code === null && <p>{words.tooLarge}</p>}
      {code !== null && (
        <>
          <p>{codes.length === 1 ? words.codeHint : words.codesHint(codes.length)}</p>
          {codes.length > 1 && (
            <div class={styles.keys}>
              {codes.map((_, index) => (
                <Key key={index} pressed={index === part} onPress={() => setPart(index)}>
                  {words.codePart(index + 1, codes.length)}
                </Key>
              ))}
            </div>
          )}
          <p id={id} hidden>
            {marked(lang, (itself) => words.codeOf(itself, part + 1, codes.length), name)}
          </p>
          <div role="img" aria-labelledby={id}>
            <svg
              class={styles.code}
              viewBox={`0 0 ${code.size} ${code.size}`}
              shape-rendering="crispEdges"
              aria-hidden="true"
            >
              <path d={code.path} />
            </svg>
          </div>
        </>
      )}
    </Part>
  );
}
