/** The whole log as files. */

import { recordFiles } from '../../board/documents/sharing';
import { setAsideFile } from '../../board/record/everything';
import { lines, logTools, nameOf, openLog, readSorties } from '../../board/record/log';
import { saveFile } from '../../device/files';
import { csv } from '../../exchange/csv';
import { heading, lineOf } from './table';
import { words } from './words';

/** How many sorties are read at a time. */
const AT_ONCE = 50;

/** Saves a line for every sortie flown, oldest first; resolves to the number of files. */
export async function saveCsv(): Promise<number> {
  await openLog();
  const names = (lines.value ?? []).map(({ sortie }) => sortie).reverse();
  const texts = [csv([heading()])];
  for (let from = 0; from < names.length; from += AT_ONCE) {
    const read = await readSorties(names.slice(from, from + AT_ONCE));
    const table = read.map((sortie) => {
      const { times } = sortie;
      return lineOf(sortie, {
        blockMinutes: logTools.value?.blockMinutes(times) ?? null,
        flightMinutes: logTools.value?.flightMinutes(times) ?? null,
        field: nameOf(sortie.field)?.code ?? '',
        aircraft: nameOf(sortie.aircraft)?.name ?? '',
      });
    });
    texts.push(csv(table));
  }
  saveFile(new File(texts, words.csv.name, { type: 'text/csv' }));
  return 1;
}

/**
 * Saves every entry and document, for import on another device, and what was set aside because it
 * couldn't be read; resolves to the number of files.
 */
export async function saveJson(): Promise<number> {
  const files = [...(await recordFiles())];
  const aside = await setAsideFile();
  if (aside !== null) files.push(aside);
  for (const file of files) saveFile(file);
  return files.length;
}
