import { fromWords, gapUnitWords, gapWords } from '@/app/_words/afterRun/gapWords';
import { elementName } from '@/app/_words/elementNames';
import type { Formatter } from '@/app/_words/formatter';
import { minutesWords } from '@/app/_words/minutesWords';
import type { Gap, GapUnit } from '@/lib/variances/gapsOf';
import type { RunResult } from '@/lib/variances/runResult';
import styles from './AfterRun.module.css';

/** Each gap with its formula: standard less actual, times what one of it counts. */
export const GapFormulas = ({ result, formatter }: Readonly<{ result: RunResult; formatter: Formatter }>) => (
  <ul className={styles.formulas}>
    {result.bars.map((bar) => (
      <li key={bar.line}>
        <span>{gapWords[bar.line]}</span>
        <span>{formulaOf(bar, formatter)}</span>
        <span className={styles.quiet}>{bar.line === 'output' ? '' : fromWords[bar.actual]}</span>
      </li>
    ))}
  </ul>
);

/** Minutes planned for the good pieces made, beside those noted. */
export const MinutesTable = ({ result, locale }: Readonly<{ result: RunResult; locale: string }>) => (
  <table className={styles.minutes}>
    <caption className="visuallyHidden">Minutes by element of work</caption>
    <thead>
      <tr>
        <th scope="col">Work</th>
        <th scope="col">Planned</th>
        <th scope="col">Noted</th>
      </tr>
    </thead>
    <tbody>
      {result.actuals.elements.map(({ element, standard, actual }) => (
        <tr key={element}>
          <th scope="row">{elementName(element)}</th>
          <td>{minutesWords(standard, locale)}</td>
          <td>{actual === null ? 'not noted' : minutesWords(actual, locale)}</td>
        </tr>
      ))}
    </tbody>
  </table>
);

// Helpers

function formulaOf({ from, to, times, units, amount }: Gap, formatter: Formatter): string {
  const written = (value: number, unit: GapUnit | null) =>
    unit === 'money'
      ? formatter.smallMoney(value)
      : `${formatter.number(value, 2)}${unit === null ? '' : ` ${gapUnitWords(unit, value)}`}`;
  const [difference, by] = units;
  const gap = `(${written(from, difference)} − ${written(to, difference)})`;
  const factor = by === null ? '' : ` × ${written(times, by)}`;
  return `${gap}${factor} = ${formatter.money(amount)}`;
}
