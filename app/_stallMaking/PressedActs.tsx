import { Button } from '@/app/_controls/Button';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { Formatter } from '@/app/_words/formatter';
import { nameOfDay, pressedWords } from '@/app/_words/stall/makingWords';
import { plansCountedBy, plansOf } from '@/lib/stall/car/plansOf';
import { closeInForce } from '@/lib/stall/closeInForce';
import { pressedEntries } from '@/lib/stall/making/pressedEntries';
import styles from './Making.module.css';
import type { Making } from './useMaking';

type PressedActsProps = Readonly<{
  workspace: ReadyWorkspace;
  /** Of the stall day. */
  id: string;
  dayName: string;
  making: Making;
  formatter: Formatter;
}>;

/** Of each job that has its numbers: that it was pressed, which brings its pieces home, or into a car that is loaded. */
export function PressedActs({
  workspace,
  id,
  dayName,
  making: { jobs, press },
  formatter,
}: PressedActsProps) {
  const { papers, piles, entries, note } = workspace;
  const countedBy = plansCountedBy(entries.stallTap, papers.dayClose);
  const isClosed = closeInForce(papers.dayClose, id) !== null;
  const loaded = isClosed ? null : (plansOf(papers.stallPlan, id, countedBy).counts?.body.goods ?? null);
  const ready = jobs.flatMap(({ jobId, isSet, designId, job }) => {
    const own = press.filter((one) => one.jobId === designId);
    const pieces = own.reduce((sum, one) => sum + one.press, 0);
    return jobId === null || !isSet || pieces === 0 ? [] : [{ jobId, name: job.name, own, pieces }];
  });
  if (ready.length === 0) return null;
  return (
    <ul className={styles.pressed}>
      {ready.map(({ jobId, name, own, pieces }) => {
        const words = pressedWords(pieces, loaded !== null, formatter);
        return (
          <li key={jobId}>
            <bdi>{nameOfDay(name, dayName)}</bdi>
            <Button
              spoken={`${words}, ${name}`}
              onPress={() =>
                note(`${name} pressed`, pressedEntries(id, own, { piles, moves: entries.stockMove, loaded }))
              }
            >
              {words}
            </Button>
          </li>
        );
      })}
    </ul>
  );
}
