/** The sheets over a place. The first answer needs none of them, so they load together after it. */

import type { JSX } from 'preact';
import { type OpenSheet, ROOMS, sheet } from '../board/places';
import { Boundary } from '../parts/boundary/Boundary';
import { laterSheet } from '../parts/later/Later';
import { KeysSheet } from '../views/keys/KeysSheet';
import { CompareSheet } from '../views/library/CompareSheet';
import { IncomingSheet } from '../views/library/IncomingSheet';
import { LoadSheet } from '../views/load/LoadSheet';
import { LoggedSheet } from '../views/log/LoggedSheet';
import { PrintSheet } from '../views/print/PrintSheet';
import { ShareSheet } from '../views/share/ShareSheet';
import { ClockSheet } from '../views/sortie/ClockSheet';
import { Lists } from '../views/steps/Lists';
import { VerdictSheet } from '../views/verdict/VerdictSheet';
import { WhySheet } from '../views/why/WhySheet';
import { BrokenSheet, FailedSheet } from './Broken';
import { Room } from './Room';

/** Rarely used, and larger than the others: loaded when first opened. */
const editor = laterSheet(() => import('../views/editor/Editor').then(({ Editor }) => Editor));

/** Only for an aircraft of one's own: loaded when first opened. */
const procedureSheet = laterSheet(() =>
  import('../views/procedure/ProcedureSheet').then(({ ProcedureSheet }) => ProcedureSheet),
);

/** Few make a lesson: loaded when first opened. */
const lesson = laterSheet(() =>
  import('../views/share/LessonSheet').then(({ LessonSheet }) => LessonSheet),
);
const printLesson = laterSheet(() =>
  import('../views/print/LessonPrintSheet').then(({ LessonPrintSheet }) => LessonPrintSheet),
);

/** Few draw a field: loaded when first opened. */
const fieldEditor = laterSheet(() =>
  import('../views/fieldEditor/FieldEditor').then(({ FieldEditor }) => FieldEditor),
);

/** Few make an aircraft: loaded when first opened. */
const aircraftEditor = laterSheet(() =>
  import('../views/aircraftEditor/AircraftEditor').then(({ AircraftEditor }) => AircraftEditor),
);

/** Few bring a map: loaded when one is looked at. */
const map = laterSheet(() => import('../views/map/MapSheet').then(({ MapSheet }) => MapSheet));

const under = (open: OpenSheet): OpenSheet | null => ('over' in open ? open.over : null);

/**
 * The open sheet and those beneath it: they stay as they are, and get the focus back. `onClose`
 * serves while this is still loading.
 */
export function Sheets(_: { onClose: () => void }): JSX.Element {
  const stack: OpenSheet[] = [];
  for (let open = sheet.value; open !== null; open = under(open)) stack.unshift(open);
  return (
    <>
      {stack.map((open) => (
        <Boundary
          key={isRoom(open) ? 'room' : open.kind}
          fallback={(again) => <BrokenSheet onAgain={again} onWithout={() => close(open)} />}
        >
          <Opened open={open} />
        </Boundary>
      ))}
    </>
  );
}

const isRoom = ({ kind }: OpenSheet) => ROOMS.some((name) => name === kind);

/** Closes a sheet, down to the one beneath it. */
function close(open: OpenSheet): void {
  sheet.value = under(open);
}

function Opened({ open }: { open: OpenSheet }): JSX.Element {
  const onClose = () => close(open);
  switch (open.kind) {
    case 'sortie':
    case 'library':
    case 'device':
    case 'about':
      return <Room name={open.kind} onClose={onClose} />;
    case 'clock':
      return <ClockSheet onClose={onClose} />;
    case 'failed':
      return <FailedSheet onClose={onClose} />;
    case 'wrong':
      return <Lists onClose={onClose} />;
    case 'keys':
      return <KeysSheet onClose={onClose} />;
    case 'drawing':
      return <fieldEditor.Later of={open.of} onClose={onClose} />;
    case 'making':
      return <aircraftEditor.Later of={open.of} onClose={onClose} />;
    case 'load':
      return <LoadSheet onClose={onClose} />;
    case 'logged':
      return <LoggedSheet id={open.sortie} onClose={onClose} />;
    case 'share':
      return <ShareSheet hash={open.hash} onClose={onClose} />;
    case 'print':
      return <PrintSheet hash={open.hash} onClose={onClose} />;
    case 'lesson':
      return <lesson.Later onClose={onClose} />;
    case 'printLesson': {
      const { name, note, documents } = open;
      return <printLesson.Later {...{ name, note, documents, onClose }} />;
    }
    case 'compare':
      return <CompareSheet hash={open.hash} onClose={onClose} />;
    case 'incoming':
      return <IncomingSheet from={open.from} onClose={onClose} />;
    case 'map':
      return <map.Later from={open.from} onClose={onClose} />;
    case 'editor':
      return <editor.Later hash={open.hash} onClose={onClose} />;
    case 'procedure':
      return <procedureSheet.Later onClose={onClose} />;
    case 'verdict':
      return <VerdictSheet onClose={onClose} />;
    case 'why':
      return <WhySheet title={open.title} figure={open.figure} onClose={onClose} />;
  }
}
