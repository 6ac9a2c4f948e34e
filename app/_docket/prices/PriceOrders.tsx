'use client';

import { NumberField } from '@/app/_fields/NumberField';
import { amountWords } from '@/app/_words/amountWords';
import { type BreakListFormat, someSizes } from '@/app/_words/docket/breakListWords';
import type { BreaksAnswer } from '@/lib/studies/breaks/breaksAnswer';
import { numberLimits } from '@/shared/limits';
import { formatMinor } from '@/shared/money';
import { workshopSchema } from '@/shared/schemas/workshop';
import styles from './BreaksTest.module.css';

type PriceOrdersProps = Readonly<{
  answer: BreaksAnswer;
  format: BreakListFormat;
  /** The quantity the maker typed; null for none. */
  pieces: number | null;
  onPieces: (pieces: number | null) => void;
}>;

/** What whole orders pay: at the edges of breaks where a rule of selling is in force, and of any quantity. */
export function PriceOrders({ answer, format, pieces, onPieces }: PriceOrdersProps) {
  const { sold, groups, currency } = answer;
  const { formatter, locale } = format;
  const [group] = groups;
  if (group === undefined) return null;
  const ruled = group.sold.kind !== 'asListed';
  const sizes =
    group.sizes.length === format.sizes.length
      ? 'this job’s mix of sizes'
      : someSizes(group.sizes, format.sizes);
  return (
    <section className={styles.test} aria-labelledby={`orders-${answer.lineId}`}>
      <h3 className="visuallyHidden" id={`orders-${answer.lineId}`}>
        What an order pays
      </h3>
      <NumberField
        label="Pieces of an order"
        unit="pieces"
        value={pieces}
        {...numberLimits(workshopSchema, ['policy', 'breaks', 0])}
        width="narrow"
        hint={`In ${sizes}. Only looked at, not kept.`}
        onCommit={onPieces}
      />
      {sold.length > 0 && (
        <div className={styles.orders}>
          <table>
            <caption className="visuallyHidden">What orders of so many pieces pay, in {currency}</caption>
            <thead>
              <tr>
                <th scope="col">Pieces</th>
                <th scope="col">Pay, {currency}</th>
                <th scope="col">Each</th>
                {ruled && <th scope="col">As listed</th>}
                <th scope="col">Margin</th>
              </tr>
            </thead>
            <tbody>
              {sold.map(({ n, before, after, each, marginAfter }) => (
                <tr key={n} className={n === pieces ? styles.asked : undefined}>
                  <th scope="row">{formatter.number(n, 0)}</th>
                  <td>{formatMinor(after, currency, locale)}</td>
                  <td>{amountWords(each, currency, locale)}</td>
                  {ruled && <td>{formatMinor(before, currency, locale)}</td>}
                  <td>{formatter.share(marginAfter)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </section>
  );
}
