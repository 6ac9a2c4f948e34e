'use client';

import { useState } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { formMemory } from '@/app/_fields/formMemory';
import { NumberField } from '@/app/_fields/NumberField';
import { useTypedChoice, useTypedNumber } from '@/app/_fields/useTyped';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { notNotedWords } from '@/app/_words/orders/notes/orderNoteWords';
import { gradeWords } from '@/app/_words/press/gradeWords';
import type { RecipeLog } from '@/lib/pressing/recipeLogs';
import { WASHES_NEEDED } from '@/lib/pressing/recipeStanding';
import { numberLimits } from '@/shared/limits';
import { washCheckSchema } from '@/shared/schemas/making/pressLog';
import styles from './Log.module.css';

type WashFormProps = Readonly<{ workspace: ReadyWorkspace; log: RecipeLog }>;

/** A pressed piece after so many washes, held against the grey scale. */
export function WashForm({ workspace, log }: WashFormProps) {
  const { recipe, blankId, pressId } = log;
  const today = useToday();
  const form = { orderId: 'press-log', name: `wash check ${log.key}`, isErased: false };
  const cycles = useTypedNumber(form, 'cycles', WASHES_NEEDED);
  const [grade, setGrade] = useTypedChoice(form, 'grade', gradeWords, null);
  const [problem, setProblem] = useState<string | null>(null);
  const missing =
    cycles.value === null
      ? 'How many washes comes first.'
      : grade === null
        ? 'Its grade comes first.'
        : undefined;
  const enter = () => {
    if (cycles.value === null || grade === null) return;
    const testId = log.tests[0]?.id ?? null;
    const body = {
      ...{ testId, day: today, blankId, pressId, recipe },
      ...{ cycles: cycles.value, grade: Number(grade), note: '' },
    };
    const { state } = workspace.note('Wash check', [{ kind: 'washCheck', body }]);
    setProblem(state === 'shown' ? null : notNotedWords(state));
    if (state === 'shown') formMemory.forget(form);
  };
  return (
    <EntryForm className={styles.form} label="Wash check" missing={missing} onEnter={enter}>
      <FieldGroup>
        <NumberField label="Washes" {...numberLimits(washCheckSchema, ['cycles'])} {...cycles} />
        <ChoiceField
          label="Grade on the grey scale"
          value={grade}
          choices={Object.entries(gradeWords).map(([value, label]) => ({ value, label }))}
          onCommit={(value) => setGrade(value as keyof typeof gradeWords)}
        />
      </FieldGroup>
      <p role="alert">{problem}</p>
      <Button type="submit" blockedBy={missing}>
        Note the wash check
      </Button>
    </EntryForm>
  );
}
