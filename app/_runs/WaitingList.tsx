import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import sheet from '@/app/_controls/ListSheet.module.css';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { runListTable } from '@/app/_words/making/runs/runListTable';
import { nearDayWords } from '@/app/_words/orders/nearDayWords';
import { usableLocale } from '@/app/_words/usableLocale';
import type { ToMake } from '@/lib/making/list/toMake';
import styles from './Runs.module.css';

type WaitingListProps = Readonly<{
  waiting: readonly ToMake[];
  workspace: Pick<ReadyWorkspace, 'workshop'>;
  onMake: (one: ToMake) => void;
}>;

/** More than this are found in the form of a new run. */
const MOST = 6;

/** Orders and stall days that wait to be made, each with one button that makes a run of it. */
export function WaitingList({ waiting, workspace: { workshop }, onMake }: WaitingListProps) {
  const today = useToday();
  const locale = usableLocale(workshop.locale);
  return (
    <section aria-labelledby="runs-waiting">
      <h2 className={sheet.heading} id="runs-waiting">
        {runListTable.waits}
      </h2>
      <ul className={styles.offers}>
        {waiting.slice(0, MOST).map((one) => (
          <li className={styles.offer} key={one.id}>
            <div>
              <strong>
                <bdi>{one.name}</bdi>
              </strong>{' '}
              <span className={sheet.quiet}>
                {runListTable[one.kind]}
                {one.wantedOn !== null && `, wanted ${nearDayWords(one.wantedOn, today, locale)}`}
              </span>
            </div>
            <Button kind="strong" spoken={runListTable.makeOf(one.name)} onPress={() => onMake(one)}>
              {runListTable.make}
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}
