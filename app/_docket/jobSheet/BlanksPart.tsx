import type { Formatter } from '@/app/_words/formatter';
import { ownEntry } from '@/lib/job/ownEntry';
import type { JobSheetFacts } from '@/lib/jobSheet/jobSheet';
import type { JobInput } from '@/shared/schemas/request';
import styles from './BlanksPart.module.css';
import sheet from './JobSheet.module.css';
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
              <td className={styles.cell} />
              {sizes.map((size) => (
                <th className={styles.size} scope="col" key={size}>
                  <bdi>{size}</bdi>
                </th>
              ))}
              <th className={styles.size} scope="col">
                in all
              </th>
            </tr>
          </thead>
          <tbody>
            {lines.map(({ lineId, name, sizes: own, take }) => (
              <tr key={lineId}>
                <th className={styles.name} scope="row">
                  <bdi>{name}</bdi>
                </th>
                {sizes.map((size) => {
                  const taken = own.find((one) => one.size === size)?.take;
                  return (
                    <td className={styles.cell} key={size}>
                      {taken !== undefined && (
                        <span className={sheet.tick}>
                          <span className={sheet.box} aria-hidden="true" />
                          <strong>{formatter.number(taken)}</strong>
                        </span>
                      )}
                    </td>
                  );
                })}
                <td className={styles.cell}>{formatter.number(take)}</td>
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
