'use client';

import { Button } from '@/app/_controls/Button';
import { useTextContext } from '@/app/_fields/useTextContext';
import { type CurveFigure, curveFigures } from '@/app/_words/docket/curveWords';
import type { PieceWord } from '@/app/_words/docket/pieceWords';
import { formatterFor } from '@/app/_words/formatter';
import type { TaxTerms } from '@/lib/price/taxTerms';
import type { BatchPoint } from '@/lib/studies/curve/batchPoint';
import styles from './CurveLooked.module.css';

type CurveLookedProps = Readonly<{
  n: number;
  /** Null where a formula of the maker gives no number for the batch. */
  point: BatchPoint | null;
  asked: number;
  /** The batch of the job; null where the curve does not reach it. */
  askedPoint: BatchPoint | null;
  /** What is shown is sold at, after the count. */
  sold: string;
  piece: PieceWord;
  terms: TaxTerms;
  onMake: () => void;
  onBack: () => void;
  /** Why the job cannot be changed from here now. */
  blockedBy: string | undefined;
}>;

/** The figures of the batch that is looked at beside those of the job, and the way to make the job so large. */
export function CurveLooked(props: CurveLookedProps) {
  const { n, point, asked, askedPoint, sold, piece, terms, onMake, onBack, blockedBy } = props;
  const context = useTextContext();
  const formatter = formatterFor(context);
  const isOther = n !== asked;
  const looked = point === null ? null : curveFigures(point, piece, terms, context);
  const own = askedPoint === null ? null : curveFigures(askedPoint, piece, terms, context);
  const rows = own ?? looked ?? [];
  const write = (figure: CurveFigure | undefined) => (
    <span data-figure={figure?.marks}>{figure?.text ?? '–'}</span>
  );
  return (
    <div className={styles.looked}>
      <table className={styles.table}>
        <thead>
          <tr>
            <td />
            {isOther && <th scope="col">looked at, {formatter.number(n, 0)}</th>}
            <th scope="col">
              {isOther
                ? `this job, ${formatter.number(asked, 0)}`
                : `${formatter.count(asked, piece.one, piece.many)} ${sold}`}
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name }, at) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {isOther && <td className={styles.strong}>{looked?.[at]?.text ?? '–'}</td>}
              <td className={isOther ? styles.quiet : styles.strong}>{write(own?.[at])}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {point === null && <p>A formula of your own gives no number for this many.</p>}
      <div className={styles.buttons}>
        {isOther && (
          <>
            <Button kind="strong" blockedBy={blockedBy} onPress={onMake}>
              Make it {formatter.number(n, 0)}
            </Button>
            <Button onPress={onBack}>Back to {formatter.number(asked, 0)}</Button>
          </>
        )}
      </div>
    </div>
  );
}
