'use client';

import { useMemo } from 'react';
import { Button } from '@/app/_controls/Button';
import { stallFieldId } from '@/app/_documents/fieldAddress';
import { typing } from '@/app/_documents/typing';
import { formMemory } from '@/app/_fields/formMemory';
import { TextField } from '@/app/_fields/TextField';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import { removalRefused, removalWords } from '@/app/_words/stall/removalWords';
import { dayRemoval } from '@/lib/stall/car/dayRemoval';
import { textLimits } from '@/shared/limits';
import { stallDaySchema } from '@/shared/schemas/stallDay';
import styles from './Day.module.css';

type NoteFieldsProps = Readonly<{
  on: Pick<StallOnScreen, 'stallDay' | 'set' | 'workspace' | 'id' | 'today' | 'formatter'>;
  onRemoved: (label: string) => void;
}>;

/** What else is worth knowing, and how the day leaves the list. */
export function NoteFields({ on, onRemoved }: NoteFieldsProps) {
  const { stallDay, set, workspace, id, today, formatter } = on;
  const { archivedOn, name } = stallDay;
  const putAway = () => {
    typing.ends();
    set(
      archivedOn === null ? `Put ${name} away` : `Put ${name} back`,
      ['archivedOn'],
      archivedOn === null ? today : null,
    );
  };
  const { piles, entries, papers } = workspace;
  const { stockMove: moves, stallTap } = entries;
  const { dayClose } = papers;
  const removal = useMemo(
    () => dayRemoval(id, { piles, moves }, stallTap, dayClose),
    [id, piles, moves, stallTap, dayClose],
  );
  const told = removalRefused(removal) ?? removalWords(removal, formatter);
  const remove = () => {
    if (removal.kind === 'refused') return;
    const label = `Remove ${name}`;
    onRemoved(label);
    // What was typed of its evening goes with it.
    formMemory.forgetOrders([id]);
    // One step, so that undo loads the car again.
    workspace.note(
      label,
      removal.moves.map((body) => ({ kind: 'stockMove', body })),
      [{ do: 'delete', kind: 'stallDay', id }],
    );
  };
  return (
    <>
      <TextField
        label="Note, only for you"
        id={stallFieldId(['note'])}
        width="full"
        rows={4}
        value={stallDay.note}
        {...textLimits(stallDaySchema, ['note'])}
        onCommit={(to) => set('Note', ['note'], to)}
      />
      <div className={styles.ends}>
        <Button onPress={putAway}>{archivedOn === null ? 'Put it away' : 'Put it back'}</Button>
        <Button
          kind="quiet"
          blockedBy={removalRefused(removal)}
          describedBy={told === null ? undefined : `${id}-removal`}
          onPress={remove}
        >
          Remove this stall day
        </Button>
      </div>
      {told !== null && (
        <p id={`${id}-removal`} className={styles.quiet}>
          {told}
        </p>
      )}
    </>
  );
}
