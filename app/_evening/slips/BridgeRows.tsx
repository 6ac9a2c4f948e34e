import { classes } from '@/app/_controls/classes';
import { minorWords } from '@/app/_words/orders/minorWords';
import { bridgeWords, startWords } from '@/app/_words/stall/evening/resultWords';
import type { Bridge } from '@/lib/stall/evening/bridge';
import { fromMinor, shownParts, toMinor } from '@/shared/money';
import styles from './Slips.module.css';

type BridgeRowsProps = Readonly<{ bridge: Bridge; currency: string; locale: string }>;

/** From the profit of the plan to that of the day, step by step; what is shown adds up to what is shown. */
export function BridgeRows({ bridge, currency, locale }: BridgeRowsProps) {
  const start = toMinor(bridge.from, currency);
  const end = toMinor(bridge.to, currency);
  const parts = shownParts(
    fromMinor((end - start) as typeof end, currency),
    bridge.steps.map(({ by }) => by),
    currency,
  );
  let at: number = start;
  const steps = bridge.steps.flatMap(({ what }, index) => {
    const by = parts[index] ?? 0;
    const from = at;
    at += by;
    return by === 0 ? [] : [{ what, by, from, to: at }];
  });
  const points = [0, start, end, ...steps.map(({ to }) => to)];
  const [least, most] = [Math.min(...points), Math.max(...points)];
  const across = (minor: number) => ((minor - least) / (most - least || 1)) * 100;
  const bar = (from: number, to: number) => ({
    x: across(Math.min(from, to)),
    width: Math.max(0.6, Math.abs(across(to) - across(from))),
  });
  const minor = (amount: number) => minorWords(amount, currency, locale);
  return (
    <table className={styles.table}>
      <caption className="visuallyHidden">From plan to day</caption>
      <tbody>
        <BridgeRow
          name={startWords(bridge.weather)}
          bar={bar(0, start)}
          look="planned"
          figure={minor(start)}
        />
        {steps.map(({ what, by, from, to }) => (
          <BridgeRow
            key={what}
            name={bridgeWords[what]}
            bar={bar(from, to)}
            look={by < 0 ? 'less' : 'more'}
            figure={`${by > 0 ? '+' : ''}${minor(by)}`}
          />
        ))}
        <BridgeRow name="the day" bar={bar(0, end)} look="day" figure={minor(end)} />
      </tbody>
    </table>
  );
}

// Helpers

type BridgeRowProps = Readonly<{
  name: string;
  bar: Readonly<{ x: number; width: number }>;
  look: 'planned' | 'less' | 'more' | 'day';
  figure: string;
}>;

const BridgeRow = ({ name, bar, look, figure }: BridgeRowProps) => (
  <tr>
    <th scope="row">{name}</th>
    <td className={styles.bar}>
      <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true" focusable="false">
        <rect className={styles[look]} x={bar.x} width={bar.width} height="10" />
      </svg>
    </td>
    <td className={classes(look === 'less' && styles.lossFigure)}>{figure}</td>
  </tr>
);
