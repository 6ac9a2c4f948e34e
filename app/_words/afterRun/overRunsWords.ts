import type { Formatter } from '@/app/_words/formatter';
import { minorMoney } from '@/app/_words/orders/minorWords';
import type { ClosedRun } from '@/lib/variances/acrossRuns';
import { toMinor } from '@/shared/money';

/** All runs that are closed, side by side. */
export const overRunsTable = {
  heading: 'Over all runs',
  run: 'Run',
  columns: {
    quoted: 'Price quoted',
    made: 'Price as made',
    paid: 'Money that came',
    profitQuoted: 'Profit quoted',
    profitMade: 'Profit made',
    hourQuoted: 'An hour, quoted',
    hourMade: 'An hour, made',
  },
  caption: (currency: string) => `Closed runs: quoted, made and paid, ${currency}`,
  told: 'Prices are without tax; money that came is what its orders paid, tax in it.',
  noOrder: 'no order',
  nonePaid: 'none noted',
  paidElsewhere: 'another currency',
  shared: ', also for another run',
  wrong: 'What keeps going wrong',
  pay: 'Pay of an hour, run by run: bars as made, lines as quoted',
} as const;

/** “48.29 USD an hour over 3 runs; 56.26 USD quoted”, hours of all together. */
export function overRunsWords(
  closed: readonly ClosedRun[],
  currency: string,
  formatter: Formatter,
  locale: string,
): { readonly key: string; readonly after: string } {
  const many = formatter.count(closed.length, 'run');
  const mean = (of: 'quoted' | 'came') => {
    const all = closed.flatMap(({ result }) => {
      const one = result[of];
      return one?.payPerHour == null ? [] : [{ pay: one.payPerHour * one.hours, hours: one.hours }];
    });
    const hours = all.reduce((sum, one) => sum + one.hours, 0);
    return hours === 0 ? null : all.reduce((sum, { pay }) => sum + pay, 0) / hours;
  };
  const [came, quoted] = [mean('came'), mean('quoted')];
  if (came === null) return { key: many, after: ' closed, of none is the pay known' };
  const money = (amount: number) => minorMoney(toMinor(amount, currency), currency, locale);
  return {
    key: `${money(came)} an hour`,
    after: ` over ${many}${quoted === null ? '' : `; ${money(quoted)} quoted`}`,
  };
}
