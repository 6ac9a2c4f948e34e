'use client';

import { Button } from '@/app/_controls/Button';
import { stallFieldId } from '@/app/_documents/fieldAddress';
import { typing } from '@/app/_documents/typing';
import { TextField } from '@/app/_fields/TextField';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import { textLimits } from '@/shared/limits';
import { stallDaySchema } from '@/shared/schemas/stallDay';
import styles from './Day.module.css';

type NoteFieldsProps = Readonly<{
  on: Pick<StallOnScreen, 'stallDay' | 'set' | 'workspace' | 'id' | 'today'>;
  onRemoved: (label: string) => void;
}>;

/** What else is worth knowing, and how the day leaves the list. */
export function NoteFields({ on, onRemoved }: NoteFieldsProps) {
  const { stallDay, set, workspace, id, today } = on;
  const { archivedOn, name } = stallDay;
  const putAway = () => {
    typing.ends();
    set(
      archivedOn === null ? `Put ${name} away` : `Put ${name} back`,
      ['archivedOn'],
      archivedOn === null ? today : null,
    );
  };
  const remove = () => {
    const label = `Remove ${name}`;
    onRemoved(label);
    workspace.remove({ kind: 'stallDay', id }, label);
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
        <Button kind="quiet" onPress={remove}>
          Remove this stall day
        </Button>
      </div>
    </>
  );
}
