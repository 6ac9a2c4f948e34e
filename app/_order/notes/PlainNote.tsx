'use client';

import { useState } from 'react';
import { TextField } from '@/app/_fields/TextField';
import { doesNotCountWords } from '@/app/_words/orders/orderNoteWords';
import { stepWords } from '@/app/_words/orders/orderStepWords';
import { gatesOf, isMoving } from '@/lib/orders/stepOrder';
import { textLimits } from '@/shared/limits';
import { orderEventSchema } from '@/shared/schemas/orderEvents';
import { NoteFrame } from './NoteFrame';
import styles from './Notes.module.css';
import { isOfVersions, type PlainStep } from './plainStep';
import type { StepNoteProps } from './stepNote';
import { useNoting } from './useNoting';

/** A step with nothing to tell but its day and a note; what is made names the versions of its pictures. */
export function PlainNote({ on, what, onDone, onLeave }: StepNoteProps & Readonly<{ what: PlainStep }>) {
  const { facts, standing } = on;
  const [text, setText] = useState('');
  const { problem, noteSteps } = useNoting(on);
  const note = text.trim();
  const step = isOfVersions(what)
    ? ({ what, note, ...(facts.artworks.length > 0 && { versions: [...facts.artworks] }) } as const)
    : ({ what, note } as const);
  const shut = isMoving(step) ? gatesOf(step.what).filter((gate) => standing.gates[gate] === 'shut') : [];
  return (
    <NoteFrame
      name={stepWords[what]}
      {...{ on, problem, onLeave }}
      onEnter={(day) => {
        if (noteSteps(day, [step])) onDone();
      }}
    >
      {shut.length > 0 && <p className={styles.caution}>{doesNotCountWords(shut)}</p>}
      <TextField
        label="Note"
        width="full"
        value={text}
        {...textLimits(orderEventSchema, ['step', 'note'])}
        hint="May stay empty."
        onCommit={setText}
      />
    </NoteFrame>
  );
}
