'use client';

import { Fold } from '@/app/_controls/Fold';
import { CheckField } from '@/app/_fields/CheckField';
import styles from '@/app/_supply/Supply.module.css';
import { workWords } from '@/app/_words/supply/listWords';
import type { WorkChoice } from './buyingWorks';

type WorkChoicesProps = Readonly<{
  choices: readonly WorkChoice[];
  chosen: readonly string[];
  onToggle: (key: string, isOn: boolean) => void;
}>;

/** What can be bought for: accepted orders and runs at once, what nobody may ever take folded away. */
export function WorkChoices({ choices, chosen, onToggle }: WorkChoicesProps) {
  const [waited, others] = [
    choices.filter(({ kind }) => isSure(kind)),
    choices.filter(({ kind }) => !isSure(kind)),
  ];
  const fields = (some: readonly WorkChoice[]) =>
    some.map(({ key, name, kind }) => (
      <CheckField
        key={key}
        label={workWords(name, kind)}
        checked={chosen.includes(key)}
        onCommit={(isOn) => onToggle(key, isOn)}
      />
    ));
  return (
    <div className={styles.rows}>
      {choices.length === 0 && (
        <p className={styles.none}>Nothing waits to be bought for: what there is stands on a list already.</p>
      )}
      {fields(waited)}
      {others.length > 0 && (
        <Fold summary="Not accepted yet, or asked for by nobody" isOpenAtFirst={waited.length === 0}>
          <div className={styles.rows}>{fields(others)}</div>
        </Fold>
      )}
    </div>
  );
}

// Helpers

const isSure = (kind: WorkChoice['kind']) => kind === 'order' || kind === 'run';
