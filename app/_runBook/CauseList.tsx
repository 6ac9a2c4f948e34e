import { faultNames } from '@/app/_words/press/faultWords';
import { everyCauseNamed, tappedWords } from '@/app/_words/press/pressWords';
import type { PressedRun } from '@/lib/pressing/foldPressings';
import { likelyFaults } from '@/lib/pressing/likelyFaults';
import type { PressedEntry } from '@/lib/pressing/pressedEntry';
import type { PressFault } from '@/shared/tables/faults';
import styles from './CauseList.module.css';

type CauseListProps = Readonly<{
  run: Pick<PressedRun, 'turns' | 'pressed' | 'withoutCause'>;
  onName: (entry: PressedEntry, fault: PressFault) => void;
}>;

/** Pieces that were lost and nobody said why: named later, they keep their place. */
export function CauseList({ run, onName }: CauseListProps) {
  const names = new Map(run.turns.map(({ placementId, placement }) => [placementId, placement.name]));
  if (run.withoutCause.length === 0) return <p>{everyCauseNamed}</p>;
  return run.withoutCause.map((entry) => (
    <section key={entry.id} className={styles.part}>
      <h3>
        {tappedWords(entry.body)}, {names.get(entry.body.placementId) ?? 'another print'}
      </h3>
      <div className={styles.keys}>
        {likelyFaults(run.pressed).map((fault) => (
          <button key={fault} type="button" className={styles.choice} onClick={() => onName(entry, fault)}>
            {faultNames[fault]}
          </button>
        ))}
      </div>
    </section>
  ));
}
