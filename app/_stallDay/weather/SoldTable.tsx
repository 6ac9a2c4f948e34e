import type { StallOnScreen, StallPlan } from '@/app/_stallDay/stallOnScreen';
import { fromHomeWords } from '@/app/_words/stall/fromHomeWords';
import { soldRows } from '@/app/_words/stall/soldRows';
import { weatherLabel } from '@/app/_words/stall/weatherWords';
import { broughtFromHome } from '@/lib/stall/broughtFromHome';
import { outcomeKey } from './bandsOf';
import styles from './Weather.module.css';

/** What is behind the profit of each weather, with the maker's numbers. */
export function SoldTable({ on, plan }: Readonly<{ on: StallOnScreen; plan: StallPlan }>) {
  const { outcomes, weighted } = plan.mine;
  const columns = [
    ...outcomes.map((one) => ({ ...one, key: outcomeKey(one), name: weatherLabel(one, on.stallDay) })),
    { ...weighted, key: 'expected', name: 'to expect' },
  ];
  const fromHome = fromHomeWords(
    plan.goods.reduce((sum, { finishedBefore, mine }) => sum + broughtFromHome(mine, finishedBefore), 0),
    on.formatter,
  );
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls sideways on a phone, by keys too */}
      <section className={styles.wide} tabIndex={0} aria-label="Sold, fees and leftovers">
        <table className={styles.named}>
          <thead>
            <tr>
              <th scope="col">with your {plan.mine.pieces}</th>
              {columns.map(({ key, name }) => (
                <th key={key} scope="col">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {soldRows.map(({ name, of }) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                {columns.map((column) => (
                  <td key={column.key}>{of(column, on.formatter.number, on.amount)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {fromHome !== null && <p className={styles.facts}>{fromHome}</p>}
    </>
  );
}
