'use client';

import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { EntryForm } from '@/app/_fields/EntryForm';
import { formMemory } from '@/app/_fields/formMemory';
import { MeasureField } from '@/app/_fields/MeasureField';
import { useTypedNumber } from '@/app/_fields/useTyped';
import { numberLimits } from '@/shared/limits';
import { runStepSchema } from '@/shared/schemas/making/runEvents';
import type { AtThePress } from '../usePressing';
import styles from './Panel.module.css';

type HeatedPartProps = Readonly<{ pressing: AtThePress; onDone: () => void }>;

/** What a strip or probe read on the platen, and how the room is. Every field may stay empty. */
export function HeatedPart({ pressing, onDone }: HeatedPartProps) {
  const { runId, turn, step } = pressing;
  const today = useToday();
  const form = { orderId: runId, name: 'press heated', isErased: false };
  const measured = useTypedNumber(form, 'measured');
  const room = useTypedNumber(form, 'room');
  const humidity = useTypedNumber(form, 'humidity');
  const enter = () => {
    const isNoted = step(
      'The press was heated up',
      {
        ...{ what: 'heated', pressId: turn.placement.pressId, measuredC: measured.value },
        ...{ roomC: room.value, humidity: humidity.value },
      },
      today,
    );
    if (!isNoted) return;
    formMemory.forget(form);
    onDone();
  };
  return (
    <EntryForm className={styles.form} label="The press was heated up" missing={undefined} onEnter={enter}>
      <MeasureField
        label="Platen, measured"
        kind="temperature"
        {...numberLimits(runStepSchema, ['step', 'measuredC'])}
        {...measured}
      />
      <MeasureField
        label="Room"
        kind="temperature"
        {...numberLimits(runStepSchema, ['step', 'roomC'])}
        {...room}
      />
      <MeasureField
        label="Dampness of the air"
        kind="share"
        {...numberLimits(runStepSchema, ['step', 'humidity'])}
        {...humidity}
      />
      <Button type="submit" kind="strong">
        Note it
      </Button>
    </EntryForm>
  );
}
