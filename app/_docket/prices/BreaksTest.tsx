'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { changesBack } from '@/app/_docket/common/changesBack';
import { changesStand } from '@/app/_docket/common/changesStand';
import { useJob } from '@/app/_docket/common/useJob';
import { type BreakListFormat, stretchWords, thinWords, tieWords } from '@/app/_words/docket/breakListWords';
import { LOOKED_AT_UP_TO } from '@/lib/price/list/firstFall';
import type { BreaksAnswer } from '@/lib/studies/breaks/breaksAnswer';
import type { Change } from '@/shared/finding';
import styles from './BreaksTest.module.css';
import { PriceRemedies } from './PriceRemedies';

type BreaksTestProps = Readonly<{
  lineId: string;
  answer: BreaksAnswer;
  /** What a finished piece of the line is called. */
  piece: string;
  format: BreakListFormat;
  /** True while the answer is of an older state. */
  stale: boolean;
}>;

const rules = {
  capped: 'Orders are capped: none pays more than a larger one would.',
  slab: 'Orders are reckoned by slabs: the lower price holds only for the pieces beyond a break.',
  setUpApart: 'Orders are sold at so much to start and so much a piece.',
  onePrice: 'One price a size holds for every quantity.',
} as const;

/** A remedy that was taken, with the way back. */
interface Taken {
  readonly name: string;
  readonly changes: readonly Change[];
  readonly back: readonly Change[];
}

/** Whether more pieces ever cost less, where, and what mends it; a remedy can be taken back. */
export function BreaksTest(props: BreaksTestProps) {
  const { lineId, answer, piece, format, stale } = props;
  const { jobId, input, workspace } = useJob();
  const [taken, setTaken] = useState<Taken | null>(null);
  const { groups, remedies, breakProblems } = answer;
  const index = input.job.lines.findIndex(({ id }) => id === lineId);
  const selling = answer.list.rule;
  const passed = groups.every(({ falls }) => falls === null);
  const upTo = format.formatter.number(LOOKED_AT_UP_TO, 0);
  const late = breakProblems.find(({ kind }) => kind === 'beginsLate');
  const apply = (name: string, changes: readonly Change[]) => void workspace.applyFix(jobId, name, changes);
  const take = (name: string, changes: readonly Change[]) => {
    // The button that was pressed goes with its list.
    focusById(`list-test-${lineId}`);
    setTaken({ name, changes, back: changesBack(changes, input) });
    apply(name, changes);
  };
  // Undone, or changed by hand since: then there is nothing to take back.
  const last = taken !== null && changesStand(taken.changes, input) ? taken : null;
  const thin = thinWords(groups, format);
  const tie = selling === 'asListed' ? tieWords(groups, format) : '';
  return (
    <section className={styles.test} aria-labelledby={`list-test-${lineId}`}>
      <h3 id={`list-test-${lineId}`} tabIndex={-1}>
        Do more pieces ever cost less?
      </h3>
      {selling !== 'asListed' && (
        <div className={styles.row}>
          <p>{rules[selling]}</p>
          {last === null && (
            <Button
              onPress={() =>
                apply('Way of selling', [
                  { document: 'job', path: ['lines', index, 'selling'], value: 'asListed' },
                ])
              }
            >
              Sell by the list as it stands
            </Button>
          )}
        </div>
      )}
      <div aria-live="polite">
        {passed ? (
          <p className={styles.passed}>
            {groups.some(({ list }) => list.breaks.length > 1)
              ? `No total falls as the quantity rises, looked at from 1 to ${upTo}.`
              : 'One price holds for every quantity, so no total falls as the quantity rises.'}
          </p>
        ) : (
          <p className={styles.falls}>
            Yes. A buyer who reckons orders a few more and pays less, and you press them for nothing.
          </p>
        )}
      </div>
      {!passed && (
        <ul className={styles.told}>
          {stretchWords(groups, format).map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      )}
      {tie !== '' && <p>{tie}</p>}
      {thin !== '' && <p>{thin}</p>}
      {late !== undefined && 'from' in late && (
        <p>
          The list begins at {format.formatter.count(late.from, 'piece')}: smaller orders have no price. Let a
          break begin at 1, or say on the list that fewer are not made.
        </p>
      )}
      {last !== null && (
        <div className={styles.row}>
          <p>{last.name}: taken.</p>
          <Button
            onPress={() => {
              apply(`${last.name}, taken back`, last.back);
              focusById(`list-test-${lineId}`);
              setTaken(null);
            }}
          >
            Take it back
          </Button>
        </div>
      )}
      {remedies.length > 0 && (
        <PriceRemedies
          {...{ remedies, piece, format }}
          tariff={answer.tariff?.written ?? null}
          stale={stale}
          onTake={take}
        />
      )}
    </section>
  );
}
