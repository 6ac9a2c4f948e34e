'use client';

import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { EntryForm } from '@/app/_fields/EntryForm';
import { formMemory } from '@/app/_fields/formMemory';
import { TextField } from '@/app/_fields/TextField';
import { useTypedText } from '@/app/_fields/useTyped';
import { textLimits } from '@/shared/limits';
import { runStepSchema } from '@/shared/schemas/making/runEvents';
import type { AtThePress } from '../usePressing';
import styles from './Panel.module.css';

type FirstOffPartProps = Readonly<{ pressing: AtThePress; onDone: () => void }>;

/** Who looked at the first good piece of this print and found it right. */
export function FirstOffPart({ pressing, onDone }: FirstOffPartProps) {
  const { runId, turn, steps, step } = pressing;
  const today = useToday();
  const form = { orderId: runId, name: `press first off ${turn.placementId}`, isErased: false };
  const by = useTypedText(form, 'by');
  const signed = steps.flatMap(({ body }) =>
    body.step.what === 'firstOff' && body.step.placementId === turn.placementId ? [body.step.by] : [],
  );
  const missing = by.value.trim() === '' ? 'Who looked at it comes first.' : undefined;
  const enter = () => {
    const { placementId } = turn;
    if (!step('First off signed', { what: 'firstOff', placementId, by: by.value.trim() }, today)) return;
    formMemory.forget(form);
    onDone();
  };
  return (
    <EntryForm className={styles.form} label="First off" missing={missing} onEnter={enter}>
      {signed.length > 0 && <p>Signed by {signed.join(', ')}.</p>}
      <TextField
        label={`Who looked at the first ${turn.placement.name.toLowerCase()}`}
        {...textLimits(runStepSchema, ['step', 'by'])}
        {...by}
      />
      <Button type="submit" kind="strong" blockedBy={missing}>
        Sign it
      </Button>
    </EntryForm>
  );
}
