'use client';

import { faultNames } from '@/app/_words/press/faultWords';
import { tappedWords } from '@/app/_words/press/pressWords';
import { likelyFaults } from '@/lib/pressing/likelyFaults';
import type { AtThePress } from '../usePressing';
import styles from './Panel.module.css';

/** Pieces that were lost and nobody said why: named later, they keep their place. */
export function CausesPanel({ pressing }: Readonly<{ pressing: AtThePress }>) {
  const { run, nameFault } = pressing;
  const names = new Map(run.turns.map(({ placementId, placement }) => [placementId, placement.name]));
  if (run.withoutCause.length === 0) return <p>Every one has its cause.</p>;
  return run.withoutCause.map((entry) => (
    <section key={entry.id} className={styles.part}>
      <h3>
        {tappedWords(entry.body)}, {names.get(entry.body.placementId) ?? 'another print'}
      </h3>
      <div className={styles.keys}>
        {likelyFaults(run.pressed).map((fault) => (
          <button key={fault} type="button" className={styles.choice} onClick={() => nameFault(entry, fault)}>
            {faultNames[fault]}
          </button>
        ))}
      </div>
    </section>
  ));
}
