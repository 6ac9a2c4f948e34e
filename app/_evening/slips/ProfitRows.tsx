import type { EveningOnScreen } from '@/app/_evening/eveningOnScreen';
import { bridgeWords, foundWords } from '@/app/_words/stall/evening/resultWords';
import { fromHomeWords } from '@/app/_words/stall/fromHomeWords';
import { broughtFromHome } from '@/lib/stall/broughtFromHome';
import { fromMinor, type MinorUnits } from '@/shared/money';
import styles from './Slips.module.css';
import { Sums } from './Sums';

/** From the takings to the profit, step by step. */
export function ProfitRows({ on }: Readonly<{ on: EveningOnScreen }>) {
  const fromHome = fromHomeWords(
    on.evening.rows.reduce((sum, { brought, goods }) => sum + broughtFromHome(brought, goods.fromHome), 0),
    on.formatter,
  );
  return (
    <>
      <Sums rows={profitRows(on)} />
      {fromHome !== null && <p className={styles.quiet}>{fromHome}</p>}
    </>
  );
}

// Helpers

/** Each step to the profit; what was sold costs what is not told elsewhere. */
function profitRows({ evening, formatter }: EveningOnScreen) {
  const { money, result, plan, rows } = evening;
  const units = (minor: number) => fromMinor(minor as MinorUnits, plan.currency);
  const packaging = rows.reduce((sum, row) => sum + row.sold * row.goods.packaging, 0);
  const fees = units(money.fees + money.commission);
  const net = units(money.net);
  const making = net - fees - packaging - (result.contribution ?? 0);
  const found = rows.reduce((sum, row) => sum + row.found, 0);
  const figure = (amount: number) => formatter.money(amount);
  return [
    { name: 'takings without tax', figure: figure(net) },
    { name: 'fees', figure: figure(-fees) },
    { name: 'packaging', figure: figure(-packaging) },
    { name: 'making what was sold', figure: figure(-making) },
    { name: 'contribution', figure: figure(result.contribution ?? 0), isSum: true },
    { name: 'the day and its batch, your pay inside', figure: figure(-result.fixed) },
    ...(result.spent < LEAST ? [] : [{ name: bridgeWords.spent, figure: figure(-result.spent) }]),
    { name: 'leftovers written down', figure: figure(-(result.writtenDown ?? 0)) },
    ...(['given', 'damaged', 'missing'] as const).flatMap((what) => {
      const cost = result.goneAs?.[what] ?? 0;
      return cost < LEAST ? [] : [{ name: bridgeWords[what], figure: figure(-cost) }];
    }),
    ...(found === 0 ? [] : [{ name: foundWords(formatter.count(found, 'piece')), figure: figure(0) }]),
    ...(Math.abs(result.tin) < LEAST ? [] : [{ name: 'tin and coins', figure: figure(result.tin) }]),
    { name: 'profit', figure: figure(result.profit ?? 0), isSum: true },
  ];
}

/** Currency units that no coin pays. */
const LEAST = 0.005;
