'use client';

import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import type { SheetIdea } from './bestIdea';
import { namedPrint } from './sheetNames';

/** The heading of the section: an idea goes once it is taken. */
const STAYS = 'sheets-heading';

type SheetIdeaRowProps = Readonly<{ of: SheetIdea; stale: boolean }>;

/** One change that saves paper, costed by the whole job, and the button that makes it. */
export function SheetIdeaRow({ of, stale }: SheetIdeaRowProps) {
  const formatter = formatterFor(useTextContext());
  const { jobId, workspace, costs } = useJob();
  const blockedBy = stale ? 'The job has changed; its sheets are being laid out anew.' : undefined;
  if (of.kind === 'together') {
    const { sheetsLess, rollLessMm, saved } = of.idea;
    const less =
      rollLessMm === null
        ? `${formatter.count(sheetsLess, 'sheet')} fewer`
        : `${formatter.number(rollLessMm / 1000, 2)} m less roll`;
    return (
      <>
        <p>
          <strong>Different prints on one sheet:</strong> {less}, {formatter.money(saved)} saved.
        </p>
        <Button
          blockedBy={blockedBy}
          onPress={() => {
            focusById(STAYS);
            void workspace.setField({ kind: 'job', id: jobId }, 'Prints share sheets', ['gang'], 'together');
          }}
        >
          Let prints share sheets
        </Button>
      </>
    );
  }
  const { idea } = of;
  const { name } = namedPrint(costs.madeOf, { ...idea, print: 0 });
  const to = formatter.size(idea.to.widthMm, idea.to.heightMm);
  return (
    <>
      <p>
        <strong>
          {name} {formatter.length(idea.to.widthMm)} wide instead of {formatter.length(idea.from.widthMm)}:
        </strong>{' '}
        {formatter.number(idea.perSheet, 0)} to a sheet, {formatter.count(idea.sheetsLess, 'sheet')} fewer,{' '}
        {formatter.money(idea.saved)} saved.
      </p>
      <Button
        blockedBy={blockedBy}
        onPress={() => {
          focusById(STAYS);
          void workspace.applyFix(jobId, `Print ${name} at ${to}`, idea.changes);
        }}
      >
        Print {name} at {to}
      </Button>
    </>
  );
}
