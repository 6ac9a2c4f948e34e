import { Fold } from '@/app/_controls/Fold';
import type { TextContext } from '@/app/_words/formatter';
import { answerBandWords, hitRateWords, priceBandWords } from '@/app/_words/orders/board/hitRateWords';
import { hitRates } from '@/lib/orders/board/hitRates';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import styles from './Board.module.css';

type HitRatesProps = Readonly<{ board: readonly BoardOrder[]; context: TextContext }>;

/** How many quotes were taken, by what they came to and by how soon they went out. */
export function HitRates({ board, context }: HitRatesProps) {
  return (
    <Fold summary="Which quotes are taken" line="by price, and by how soon you answer">
      <Rates board={board} context={context} />
    </Fold>
  );
}

// Helpers

/** Counted when somebody looks. */
function Rates({ board, context }: HitRatesProps) {
  const rates = hitRates(board, context.currency);
  if (rates.all.decided === 0) return <p>No quote was taken or lost yet.</p>;
  return (
    <>
      <p>Of all answered: {hitRateWords(rates.all, context)}.</p>
      <RateTable
        caption="By price"
        rows={rates.byPrice.map((rate) => [
          priceBandWords(rate.band, rates.currency, context),
          hitRateWords(rate, context),
        ])}
      />
      <RateTable
        caption="By days from enquiry to quote"
        rows={rates.byAnswer.map((rate) => [answerBandWords(rate.band), hitRateWords(rate, context)])}
      />
    </>
  );
}

type RateTableProps = Readonly<{ caption: string; rows: readonly (readonly [string, string])[] }>;

const RateTable = ({ caption, rows }: RateTableProps) => (
  <table className={styles.rates}>
    <caption>{caption}</caption>
    <tbody>
      {rows.map(([band, rate]) => (
        <tr key={band}>
          <th scope="row">{band}</th>
          <td>{rate}</td>
        </tr>
      ))}
    </tbody>
  </table>
);
