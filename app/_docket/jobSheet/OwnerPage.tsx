import { amountWords } from '@/app/_words/amountWords';
import { formatterFor, type TextContext } from '@/app/_words/formatter';
import { minutesWords } from '@/app/_words/minutesWords';
import { usableLocale } from '@/app/_words/usableLocale';
import type { JobAnswer } from '@/lib/costing/priceJob';
import { costLineIds } from '@/lib/grid/costLines';
import { type CostSheet, wholeJob } from '@/lib/grid/costSheet';
import { fromMinor, LARGEST_AMOUNT, shownParts } from '@/shared/money';
import type { JobInput } from '@/shared/schemas/request';
import styles from './JobSheet.module.css';
import { SheetHead } from './SheetHead';

type OwnerPageProps = Readonly<{
  input: JobInput;
  costSheet: CostSheet;
  prices: JobAnswer['prices'];
  context: TextContext;
}>;

/** The page that stays with the owner: what the job costs, and what it leaves. */
export function OwnerPage({ input, costSheet, prices, context }: OwnerPageProps) {
  const { currency } = costSheet;
  const formatter = formatterFor(context);
  const locale = usableLocale(context.locale);
  const money = (amount: number) => amountWords(amount, currency, locale);
  const lines = costSheet.rows.filter(
    ({ id, table }) =>
      table === 'case' &&
      (costLineIds.some((line) => line === id && line !== 'ownCosts') || id.startsWith('own_')),
  );
  const amounts = lines.map(({ id }) => wholeJob(costSheet, id));
  const fullCost = wholeJob(costSheet, 'fullCost');
  const isShared = [fullCost, ...amounts].every((amount) => Math.abs(amount) <= LARGEST_AMOUNT);
  // In cents that add up to what stands under them.
  const shown = isShared
    ? shownParts(fullCost, amounts, currency).map((minor) => fromMinor(minor, currency))
    : amounts;
  const left =
    prices === null
      ? null
      : [
          ['Price, without tax', money(prices.total)],
          ['Fees', money(prices.fees)],
          ['Full cost', money(fullCost)],
          ['Profit', money(prices.profit)],
          ['Margin', formatter.share(prices.margin)],
          ['Markup', formatter.share(prices.markup)],
          ['Pays you an hour', money(prices.payPerHour)],
        ];
  return (
    <>
      <SheetHead input={input} kind="For you alone" />
      <p className={styles.private}>Costs in {currency}. Not for the customer, and not for the bench.</p>
      <div className={styles.money}>
        <table className={styles.costs}>
          <caption>What it costs</caption>
          <tbody>
            {lines.map(({ id, label }, index) => (
              <tr key={id}>
                <th scope="row">{label}</th>
                <td>{money(shown[index] ?? 0)}</td>
              </tr>
            ))}
            <tr className={styles.total}>
              <th scope="row">Full cost</th>
              <td>{money(fullCost)}</td>
            </tr>
          </tbody>
        </table>
        <div>
          {left === null ? (
            <p>No price: a stop stands, see the docket.</p>
          ) : (
            <table className={styles.costs}>
              <caption>What it leaves</caption>
              <tbody>
                {left.map(([label, text]) => (
                  <tr key={label}>
                    <th scope="row">{label}</th>
                    <td>{text}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          )}
          <table className={styles.costs}>
            <caption>Prices asked{taxWords[taxModeOf(input) ?? 'unsaid']}</caption>
            <tbody>
              {input.job.lines.map(({ id, name, askedPrice, askedStart, upCharges }) => (
                <tr key={id}>
                  <th scope="row">
                    <bdi>{name}</bdi>
                    {upCharges.map(({ size, amount }) => (
                      <span key={size}>
                        , <bdi>{size}</bdi> {amount < 0 ? '−' : '+'}
                        {money(Math.abs(amount))}
                      </span>
                    ))}
                  </th>
                  <td>
                    {askedPrice === null ? 'not decided' : money(askedPrice)}
                    {askedStart !== null && `, ${money(askedStart)} to start`}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
          <p>
            {minutesWords(wholeJob(costSheet, 'attended'), locale)} of your time,{' '}
            {minutesWords(wholeJob(costSheet, 'unattended'), locale)} in which machines work alone.
          </p>
        </div>
      </div>
    </>
  );
}

// Helpers

const taxModeOf = ({ job, workshop }: JobInput) =>
  workshop.channels.find(({ id }) => id === job.channelId)?.taxMode ?? null;

const taxWords = { added: ', tax later', inside: ', tax inside', none: ', no tax', unsaid: '' } as const;
