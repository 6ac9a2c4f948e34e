'use client';

import { Button } from '@/app/_controls/Button';
import { NumberField } from '@/app/_fields/NumberField';
import type { Formatter } from '@/app/_words/formatter';
import type { BatchPoint } from '@/lib/studies/curve/batchPoint';
import { numberLimits } from '@/shared/limits';
import { jobSchema } from '@/shared/schemas/job';
import styles from './CurveLooked.module.css';

type CurveLookedProps = Readonly<{
  n: number;
  /** Null where a formula of the maker gives no number for the batch. */
  point: BatchPoint | null;
  asked: number;
  /** The last batch drawn. */
  to: number;
  formatter: Formatter;
  onLook: (n: number) => void;
  onMake: () => void;
  onBack: () => void;
  /** Why the job cannot be changed from here now. */
  blockedBy: string | undefined;
}>;

/** The figures of the batch that is looked at, and the way to make the job so large. */
export function CurveLooked(props: CurveLookedProps) {
  const { n, point, asked, to, formatter, onLook, onMake, onBack, blockedBy } = props;
  const figures = point === null ? [] : figuresOf(point, formatter);
  return (
    <div className={styles.looked}>
      <NumberField
        label="Pieces looked at"
        width="narrow"
        value={n}
        needed
        {...numberLimits(jobSchema, ['piecesPerSession'])}
        max={to}
        onCommit={(value) => value !== null && onLook(value)}
      />
      {point === null ? (
        <p>A formula of your own gives no number for this many.</p>
      ) : (
        <dl className={styles.figures}>
          {figures.map(({ name, text, figure }) => (
            <div className={styles.figure} key={name}>
              <dt>{name}</dt>
              <dd data-figure={n === asked ? figure : undefined}>{text}</dd>
            </div>
          ))}
        </dl>
      )}
      <div className={styles.buttons}>
        {n !== asked && (
          <>
            <Button kind="strong" blockedBy={blockedBy} onPress={onMake}>
              Make it {formatter.count(n, 'piece')}
            </Button>
            <Button kind="quiet" onPress={onBack}>
              Back to {formatter.number(asked, 0)}
            </Button>
          </>
        )}
      </div>
    </div>
  );
}

// Helpers

const figuresOf = ({ n, fullCost, price, profit, margin, payPerHour }: BatchPoint, formatter: Formatter) => [
  { name: 'a piece costs', text: formatter.money(fullCost / n), figure: undefined },
  { name: 'sold at, without tax', text: formatter.money(price / n), figure: undefined },
  { name: 'margin', text: formatter.share(margin), figure: 'margin' },
  { name: 'profit in all', text: formatter.money(profit), figure: undefined },
  { name: 'pays you an hour', text: formatter.money(payPerHour), figure: 'pay' },
];
