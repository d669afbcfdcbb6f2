/** What the procedure asks about the sortie: whether it is supersonic, and what is fitted. */

import type { JSX } from 'preact';
import { day } from '../../board/board';
import { procedure } from '../../board/documents/inUse';
import { stepsLang } from '../../board/language';
import { fitOption, setInputs } from '../../board/record/choices';
import { allStepsOf, factsIn, fittedOptions } from '../../core';
import { Key } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import { markedText } from '../../parts/marked';
import { SheetPart } from '../../parts/sheet/SheetPart';
import { words } from './words';

/** The keys for it; nothing if the procedure asks for none. */
export function Planned(): JSX.Element | null {
  const flown = procedure.value;
  if (flown === null) return null;
  const asksSupersonic = allStepsOf(flown).some(
    ({ when }) => when !== undefined && factsIn(when).includes('supersonic'),
  );
  const { options = [] } = flown;
  if (!asksSupersonic && options.length === 0) return null;
  const { supersonic, options: chosen } = day.inputs();
  const fitted = fittedOptions(flown, chosen);
  return (
    <SheetPart title={words.planned}>
      <Keys>
        {asksSupersonic && (
          <Key pressed={supersonic} onPress={() => setInputs({ supersonic: !supersonic })}>
            {words.supersonic}
          </Key>
        )}
        {options.map(({ id, name }) => (
          <Key
            key={id}
            pressed={fitted.includes(id)}
            onPress={() => fitOption(id, !fitted.includes(id))}
          >
            {markedText(stepsLang(), name)}
          </Key>
        ))}
      </Keys>
    </SheetPart>
  );
}
