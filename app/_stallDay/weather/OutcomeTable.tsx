import { classes } from '@/app/_controls/classes';
import type { StallOnScreen, StallPlan } from '@/app/_stallDay/stallOnScreen';
import { lossShareWords } from '@/app/_words/stall/stallPlanWords';
import { weatherLabel } from '@/app/_words/stall/weatherWords';
import { outcomeKey } from './bandsOf';
import styles from './Weather.module.css';

/** Profit after own pay in every weather, with the maker's numbers and with the advice. */
export function OutcomeTable({ plan, on }: Readonly<{ plan: StallPlan; on: StallOnScreen }>) {
  const { mine, advice } = plan;
  const advised = new Map(advice.outcomes.map((one) => [outcomeKey(one), one.profit]));
  const rows = [
    ...mine.outcomes.map((one) => ({
      key: outcomeKey(one),
      name: weatherLabel(one, on.stallDay),
      mine: one.profit,
      advice: advised.get(outcomeKey(one)),
    })),
    { key: 'expected', name: 'to expect', mine: mine.weighted.profit, advice: advice.weighted.profit },
  ];
  return (
    <table className={styles.outcomes}>
      <thead>
        <tr>
          <th scope="col">profit after your pay</th>
          <th scope="col">your {mine.pieces}</th>
          <th scope="col">{advice.pieces} advised</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.key}>
            <th scope="row">{row.name}</th>
            <Better mine={row.mine} advice={row.advice ?? row.mine} amount={on.amount} />
          </tr>
        ))}
        <tr>
          <th scope="row">ends in a loss</th>
          <td>{lossShareWords(mine.spread.lossChance, on.locale)}</td>
          <td>{lossShareWords(advice.spread.lossChance, on.locale)}</td>
        </tr>
      </tbody>
    </table>
  );
}

// Helpers

type BetterProps = Readonly<{ mine: number; advice: number; amount: (money: number) => string }>;

const Better = ({ mine, advice, amount }: BetterProps) => (
  <>
    <td className={classes(mine > advice && styles.better)}>{amount(mine)}</td>
    <td className={classes(advice > mine && styles.better)}>{amount(advice)}</td>
  </>
);
