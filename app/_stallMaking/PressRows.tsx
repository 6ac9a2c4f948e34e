import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { Formatter } from '@/app/_words/formatter';
import { pressRowsWords, uncountedWords } from '@/app/_words/stall/makingWords';
import { goodsKey } from '@/lib/stall/goodsKey';
import { finishedAtHome } from '@/lib/stock/finishedAtHome';
import styles from './Making.module.css';
import type { Making } from './useMaking';

type PressRowsProps = Readonly<{
  workspace: Pick<ReadyWorkspace, 'piles'>;
  making: Making;
  formatter: Formatter;
}>;

/** What is pressed, design by design, beside what the job says now. */
export function PressRows({ workspace: { piles }, making: { jobs, press }, formatter }: PressRowsProps) {
  const home = new Set(finishedAtHome(piles).map(goodsKey));
  const uncounted = press.filter((goods) => goods.press > 0 && !home.has(goodsKey(goods))).length;
  const words = uncountedWords(uncounted, formatter);
  return (
    <>
      <ul className={styles.lines}>
        {jobs.flatMap(({ designId, rows }) =>
          pressRowsWords(rows, formatter).map((line) => <li key={`${designId} ${line}`}>{line}</li>),
        )}
      </ul>
      {words !== null && <p className={styles.quiet}>{words}</p>}
    </>
  );
}
