import type { Formatter } from '@/app/_words/formatter';
import { ownEntry } from '@/lib/job/ownEntry';
import type { JobSheetFacts } from '@/lib/jobSheet/jobSheet';
import type { JobInput } from '@/shared/schemas/request';
import styles from './JobSheet.module.css';
import { SheetPart } from './SheetPart';
import { Tick, Ticks } from './Ticks';

type BlanksPartProps = Readonly<{ input: JobInput; facts: JobSheetFacts; formatter: Formatter }>;

/** More sizes than this do not fit side by side. */
const MOST_COLUMNS = 9;

/** The blanks to lay out, spares among them: of one line in a row, of several in a table by size. */
export function BlanksPart({ input, facts, formatter }: BlanksPartProps) {
  const { lines } = facts;
  const sizes = [...new Set(lines.flatMap((line) => line.sizes.map(({ size }) => size)))];
  return (
    <SheetPart
      numeral={2}
      heading="Lay out the blanks"
      aside={`${formatter.number(facts.take)} in all, ${formatter.count(facts.spare, 'spare')}; ${formatter.number(facts.covered * 100, 0)} % sure that no size runs out`}
    >
      {lines.length > 1 && sizes.length <= MOST_COLUMNS ? (
        <table className={styles.blanks}>
          <thead>
            <tr>
              <td />
              {sizes.map((size) => (
                <th scope="col" key={size}>
                  <bdi>{size}</bdi>
                </th>
              ))}
              <th scope="col">in all</th>
            </tr>
          </thead>
          <tbody>
            {lines.map(({ lineId, name, sizes: own, take }) => (
              <tr key={lineId}>
                <th scope="row">
                  <bdi>{name}</bdi>
                </th>
                {sizes.map((size) => {
                  const taken = own.find((one) => one.size === size)?.take;
                  return (
                    <td key={size}>
                      {taken !== undefined && (
                        <span className={styles.tick}>
                          <span className={styles.box} aria-hidden="true" />
                          <strong>{formatter.number(taken)}</strong>
                        </span>
                      )}
                    </td>
                  );
                })}
                <td>{formatter.number(take)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      ) : (
        lines.map(({ lineId, name, blankId, sizes: own }) => (
          <Ticks key={lineId}>
            <Tick>
              <bdi>{lines.length > 1 ? name : (ownEntry(input.blanks, blankId)?.name ?? name)}</bdi>
            </Tick>
            {own.map(({ size, take }) => (
              <Tick key={size}>
                <bdi>{size}</bdi> <strong>{formatter.number(take)}</strong>
              </Tick>
            ))}
          </Ticks>
        ))
      )}
    </SheetPart>
  );
}
