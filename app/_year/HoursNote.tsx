'use client';

import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import { useTyped, useTypedChoice, useTypedNumber, useTypedText } from '@/app/_fields/useTyped';
import { choicesOf } from '@/app/_order/notes/choicesOf';
import { NoteFrame } from '@/app/_order/notes/NoteFrame';
import { useNoting } from '@/app/_order/notes/useNoting';
import type { OpenForm } from '@/app/_order/notes/useOpenForm';
import { elementNames } from '@/app/_words/elementNames';
import { hoursQuestion } from '@/app/_words/year/entryWords';
import { numberLimits, textLimits } from '@/shared/limits';
import { type Hours, hoursSchema } from '@/shared/schemas/making/runEvents';
import { z } from '@/shared/schemas/z';
import { WORKSHOP, workChoices } from './workChoices';
import type { YearSection } from './yearSection';

type HoursNoteProps = Readonly<{
  on: YearSection;
  form: OpenForm;
  onDone: () => void;
  onLeave: () => void;
}>;

const minuteLimits = numberLimits(hoursSchema, ['minutes']);

/** Time worked: how long, doing what, and for what. */
export function HoursNote({ on, form, onDone, onLeave }: HoursNoteProps) {
  const { workspace } = on;
  const hours = useTypedNumber(form, 'hours');
  const [element, setElement] = useTypedChoice(form, 'element', elementNames, 'office');
  const [work, setWork] = useTyped(form, 'work', z.string(), WORKSHOP);
  const words = useTypedText(form, 'note');
  const { problem, note } = useNoting({ workspace }, form);
  const choices = workChoices(workspace);
  const chosen = choices.find(({ value }) => value === work) ?? choices[0];
  // Whole seconds: a third of an hour is 20 minutes.
  const minutes = hours.value === null ? null : Math.round(hours.value * 3600) / 60;
  const asked = hoursQuestion(minutes);
  const missing = minutes === null ? 'How long comes first.' : undefined;
  return (
    <NoteFrame
      name="Hours worked"
      {...{ on, form, missing, problem, onLeave }}
      isAsked={asked !== null}
      onEnter={(day) => {
        if (minutes === null || chosen === undefined) return;
        const body: Hours = {
          ...{ day, minutes, for: chosen.for, element, placementId: null, pieces: null, from: 'typed' },
          note: words.value.trim(),
        };
        if (note('Hours worked', [{ kind: 'hours', body }])) onDone();
      }}
    >
      <FieldGroup>
        <NumberField
          label="How long, in hours"
          unit="h"
          min={(minuteLimits.min ?? 0) / 60}
          max={(minuteLimits.max ?? 1440) / 60}
          width="narrow"
          hint="Of one day; 1.5 is an hour and a half, 0.75 is 45 minutes."
          caution={asked ?? undefined}
          {...hours}
        />
        <ChoiceField
          label="Doing what"
          value={element}
          choices={choicesOf(elementNames)}
          onCommit={setElement}
        />
        <ChoiceField label="For what" value={chosen?.value ?? null} choices={choices} onCommit={setWork} />
        <TextField label="Note" {...words} {...textLimits(hoursSchema, ['note'])} hint="May stay empty." />
      </FieldGroup>
    </NoteFrame>
  );
}
