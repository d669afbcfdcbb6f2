/** The sheets over the place: none is part of the first answer, so they come together after it. */

import type { JSX } from 'preact';
import { type Sheet, sheet } from '../board/places';
import { About } from '../views/about/About';
import { LoadSheet } from '../views/load/LoadSheet';
import { SortieSheet } from '../views/sortie/SortieSheet';
import { WhySheet } from '../views/why/WhySheet';

const under = (open: Sheet): Sheet | null => ('over' in open ? open.over : null);

/** The sheet that is open, and those it lies over: they stay as they are, and get the keyboard back. */
export function Sheets(): JSX.Element {
  const stack: Sheet[] = [];
  for (let open = sheet.value; open !== null; open = under(open)) stack.unshift(open);
  return (
    <>
      {stack.map((open) => (
        <Opened key={open.kind} open={open} />
      ))}
    </>
  );
}

function Opened({ open }: { open: Sheet }) {
  const close = () => {
    sheet.value = under(open);
  };
  switch (open.kind) {
    case 'sortie':
      return <SortieSheet onClose={close} />;
    case 'about':
      return <About onClose={close} />;
    case 'load':
      return <LoadSheet onClose={close} />;
    case 'why':
      return <WhySheet title={open.title} figure={open.figure} onClose={close} />;
  }
}
