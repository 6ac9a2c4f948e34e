'use client';

import { FoldRow } from '@/app/_controls/FoldRow';
import { NumberField } from '@/app/_fields/NumberField';
import { RateField } from '@/app/_fields/RateField';
import { RegionFields } from '@/app/_fields/RegionFields';
import { unitSets } from '@/app/_fields/unitSets';
import { pieceWords } from '@/app/_words/docket/pieceWords';
import { moneySize } from '@/lib/examples/scaleMoney';
import { type StartChoices, startChoicesSchema } from '@/lib/examples/startChoices';
import { dollarOf } from '@/lib/examples/startDraft';
import { numberLimits } from '@/shared/limits';
import type { JobInput } from '@/shared/schemas/request';
import styles from './Start.module.css';
import { startQuestions } from './startQuestions';

type StartFiguresProps = Readonly<{
  choices: StartChoices;
  choose: (answers: Partial<StartChoices>) => void;
  /** Null until it is said what is made. */
  input: JobInput | null;
}>;

/** Money and units, and the dozen figures that matter most: folded, because typical ones stand in for them. */
export function StartFigures({ choices, choose, input }: StartFiguresProps) {
  const { region } = choices;
  const units = unitSets.find(({ units: set }) => set.length === region.units.length);
  return (
    <>
      {moneySize(region.currency) !== 1 && <Dollar choices={choices} choose={choose} />}
      <FoldRow
        place="start"
        folds={[
          ...(input === null
            ? []
            : [
                {
                  id: 'start-dozen',
                  name: 'The dozen figures that matter most',
                  body: () => <Dozen choices={choices} choose={choose} input={input} />,
                },
              ]),
          {
            id: 'start-place',
            name: `Money and units: ${region.currency}, ${units?.label.split(',')[0]?.toLowerCase() ?? ''}`,
            body: () => (
              <RegionFields region={region} onRegion={(next) => choose({ region: next, dollar: null })} />
            ),
          },
        ]}
      />
    </>
  );
}

// Helpers

/** Typical amounts are known in dollars and euro: how much of the money of the place that is, only people there know. */
function Dollar({ choices, choose }: Omit<StartFiguresProps, 'input'>) {
  const { currency } = choices.region;
  return (
    <div className={styles.sizes}>
      <NumberField
        label="A dollar or a euro is about"
        unit={currency}
        width="narrow"
        value={dollarOf(choices)}
        {...numberLimits(startChoicesSchema, ['dollar'])}
        hint={`Typical amounts are known in dollars and euro only. They are taken times this, until you type your own in ${currency}.`}
        onCommit={(dollar) => choose({ dollar })}
      />
    </div>
  );
}

function Dozen({ choices, choose, input }: StartFiguresProps & Readonly<{ input: JobInput }>) {
  const { one } = pieceWords(input.blanks[input.job.lines[0]?.blankId ?? '']);
  return (
    <div className={styles.dozen}>
      {startQuestions(input, choices, one).map(({ id, label, changes, units, limits, rate, answer }) => (
        <RateField
          key={id}
          id={`start-${id}`}
          label={label}
          hint={changes}
          units={units}
          limits={limits}
          // Emptied, the typical one stands again: there is no way back to offer.
          typical={null}
          rate={rate}
          onCommit={(next) => choose(answer(next))}
        />
      ))}
    </div>
  );
}
