'use client';

import { TextField } from '@/app/_fields/TextField';
import { useTypedText } from '@/app/_fields/useTyped';
import { gatesInWords } from '@/app/_words/orders/notes/orderStepWords';
import { textLimits } from '@/shared/limits';
import { type OrderGate, orderEventSchema } from '@/shared/schemas/orderEvents';
import { NoteFrame } from './NoteFrame';
import styles from './Notes.module.css';
import type { StepNoteProps } from './stepNote';
import { useNoting } from './useNoting';

/** Goes on before a gate is open, for a reason that stays with the order. */
export function OverrideNote({
  on,
  form,
  gates,
  onDone,
  onLeave,
}: StepNoteProps & Readonly<{ gates: readonly OrderGate[] }>) {
  const { artworks } = on.facts;
  const reason = useTypedText(form, 'reason');
  const { problem, noteSteps } = useNoting(on, form);
  const limits = textLimits(orderEventSchema, ['step', 'reason']);
  const missing =
    reason.value.trim().length < limits.shortest
      ? `A reason has ${limits.shortest} letters at least.`
      : undefined;
  return (
    <NoteFrame
      name={`Go on without ${gatesInWords(gates)}`}
      {...{ on, form, missing, problem, onLeave }}
      onEnter={(day) => {
        const steps = gates.map(
          (gate) =>
            ({
              ...({ what: 'override', gate, reason: reason.value.trim() } as const),
              ...(gate === 'approval' && artworks.length > 0 && { versions: [...artworks] }),
            }) as const,
        );
        if (noteSteps(day, steps)) onDone();
      }}
    >
      <TextField
        label={`Why you go on without ${gatesInWords(gates)}`}
        {...reason}
        rows={2}
        width="full"
        {...limits}
      />
      <p className={styles.told}>It stays with the order and is shown, whatever becomes of it.</p>
    </NoteFrame>
  );
}
