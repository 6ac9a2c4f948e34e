import { useMemo, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { ButtonLink } from '@/app/_controls/ButtonLink';
import { FoldRow } from '@/app/_controls/FoldRow';
import { CheckField } from '@/app/_fields/CheckField';
import { closeTable } from '@/app/_words/afterRun/actualWords';
import { stockMoveWords, unsaidWords } from '@/app/_words/afterRun/tookWords';
import { blankName } from '@/app/_words/making/blankName';
import { goneNames } from '@/app/_words/making/goneNames';
import { notNotedWords } from '@/app/_words/orders/notes/orderNoteWords';
import { withCapital } from '@/app/_words/spelledNumber';
import type { RunFacts } from '@/lib/making/runFacts';
import { type RunMoves, runMoves } from '@/lib/stock/runMoves';
import { runDone } from '@/lib/variances/runDone';
import styles from './AfterRun.module.css';
import { type AfterRunOnScreen, stepBody } from './afterRunOnScreen';

/** Closes the run, and books what it moved in stock in the same step; a second close books the difference alone. */
export function CloseRun({ on }: Readonly<{ on: AfterRunOnScreen }>) {
  const { workspace, figures, result, standard } = on;
  const { facts } = figures;
  const { runId, isClosed } = facts;
  const [isBooking, setBooking] = useState(true);
  const [problem, setProblem] = useState<string | null>(null);
  const { stockMove } = workspace.entries;
  const found = useMemo(
    () => runMoves(runDone(facts, standard, result, stockMove)),
    [facts, standard, result, stockMove],
  );
  const { moves, unsaid } = found;
  const isBegun = stockMove.some(
    ({ body: { reference } }) => reference?.kind === 'run' && reference.id === runId,
  );
  const note = (label: string, step: 'closed' | 'reopened' | null, isBooked: boolean) => {
    const steps =
      step === null
        ? []
        : [
            {
              kind: 'runStep' as const,
              body: stepBody(on, step === 'closed' ? { what: step, note: '' } : { what: step }),
            },
          ];
    const undone = step === 'reopened' ? closedAhead(facts) : [];
    const booked = isBooked ? moves.map((body) => ({ kind: 'stockMove' as const, body })) : [];
    const outcome = workspace.note(label, [...steps, ...undone, ...booked]);
    setProblem(outcome.state === 'shown' ? null : notNotedWords(outcome.state));
  };
  return (
    <div className={styles.close}>
      {!isClosed && moves.length > 0 && (
        <CheckField
          label={closeTable.withStock}
          checked={isBooking}
          onCommit={setBooking}
          hint={isBegun ? closeTable.rest : undefined}
        />
      )}
      {isClosed && moves.length > 0 && <p>{isBegun ? closeTable.rest : closeTable.open}</p>}
      {isClosed && moves.length === 0 && isBegun && unsaid.length === 0 && (
        <p className={styles.quiet}>{closeTable.booked}</p>
      )}
      {isClosed && moves.length === 0 && unsaid.length > 0 && (
        <>
          <p>{isBegun ? closeTable.bookedSave : closeTable.notBooked}</p>
          <Unsaid {...{ unsaid, on }} />
        </>
      )}
      <div className={styles.ends}>
        {isClosed ? (
          <>
            {moves.length > 0 && (
              <Button onPress={() => note(closeTable.book, null, true)}>{closeTable.book}</Button>
            )}
            <Button kind="quiet" onPress={() => note(closeTable.reopen, 'reopened', false)}>
              {closeTable.reopen}
            </Button>
          </>
        ) : (
          <Button kind="strong" onPress={() => note(closeTable.close, 'closed', isBooking)}>
            {closeTable.close}
          </Button>
        )}
        {problem !== null && <p role="alert">{problem}</p>}
      </div>
      <FoldRow
        place={`after ${runId}`}
        folds={[
          {
            id: 'stock',
            name: `${closeTable.fold}${moves.length === 0 ? '' : ` (${moves.length})`}`,
            body: () => <Moves {...{ on, found }} />,
          },
        ]}
      />
    </div>
  );
}

// Helpers

/** A closing that the clock of another device dates after now would stand after the reopening too: it is taken back. */
const closedAhead = ({ steps }: RunFacts) =>
  steps.flatMap(({ id, at, body }) =>
    body.step.what === 'closed' && at > Date.now()
      ? [{ kind: 'takeBack' as const, body: { entryId: id } }]
      : [],
  );

function Moves({ on, found }: Readonly<{ on: AfterRunOnScreen; found: RunMoves }>) {
  const { workspace, standard, formatter } = on;
  const { moves, unsaid } = found;
  const names = {
    blank: (id: string) => withCapital(blankName(workspace.blanks, workspace.papers.runStandard, id)),
    sheet: (id: string) =>
      withCapital(workspace.workshop.sheets.find((one) => one.id === id)?.name ?? goneNames.sheet),
  };
  return (
    <>
      {moves.length === 0 && <p>{closeTable.nothing}</p>}
      <ul className={styles.plain}>
        {moves.map((move) => (
          <li key={JSON.stringify([move.item, move.grade, move.cause])}>
            {stockMoveWords(move, standard.body.works, names, formatter)}
          </li>
        ))}
      </ul>
      {unsaid.length > 0 && <Unsaid {...{ unsaid, on }} />}
      <ButtonLink href="/making/stock">{closeTable.stock}</ButtonLink>
    </>
  );
}

/** What cannot be booked by itself: above all ink, of whose channels nobody noted a thing. */
const Unsaid = ({ unsaid, on }: Readonly<{ unsaid: RunMoves['unsaid']; on: AfterRunOnScreen }>) => (
  <ul className={styles.plain}>
    {unsaid.map((one) => (
      <li key={JSON.stringify(one)} className={styles.quiet}>
        {unsaidWords(one, on.formatter)}
      </li>
    ))}
  </ul>
);
