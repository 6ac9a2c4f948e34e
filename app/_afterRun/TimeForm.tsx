import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { formMemory } from '@/app/_fields/formMemory';
import { NumberField } from '@/app/_fields/NumberField';
import { useTypedChoice, useTypedNumber } from '@/app/_fields/useTyped';
import { elementChoices, timeTable } from '@/app/_words/afterRun/afterRunWords';
import { elementName, elementNames } from '@/app/_words/elementNames';
import type { Formatter } from '@/app/_words/formatter';
import { minutesWords } from '@/app/_words/minutesWords';
import { notNotedWords } from '@/app/_words/orders/notes/orderNoteWords';
import { WHOLE_NIGHT_MINUTES } from '@/lib/variances/actualTroubles';
import { numberLimits } from '@/shared/limits';
import { hoursSchema, type WorkElement } from '@/shared/schemas/making/runEvents';
import { LONG_DAY_MINUTES } from '@/shared/tables/longDay';
import styles from './AfterRun.module.css';
import type { AfterRunOnScreen } from './afterRunOnScreen';

/** Time worked on the run, by element or all the rest in one. */
export function TimeForm({ on }: Readonly<{ on: AfterRunOnScreen }>) {
  const { workspace, figures } = on;
  const form = { orderId: figures.facts.runId, name: 'after time', isErased: false };
  const [element, setElement] = useTypedChoice<WorkElement, null>(form, 'element', elementNames, null);
  const time = useTypedNumber(form, 'minutes');
  const minutes = time.value;
  const [problem, setProblem] = useState<string | null>(null);
  const missing =
    element === null
      ? 'What it was for is missing.'
      : minutes === null
        ? 'The minutes are missing.'
        : undefined;
  const enter = () => {
    if (element === null || minutes === null) return;
    const outcome = workspace.note('Time worked', [
      {
        kind: 'hours',
        body: {
          ...{ day: figures.today, minutes, for: { kind: 'run', id: figures.facts.runId }, element },
          ...{ placementId: null, pieces: null, from: 'typed', note: '' },
        },
      },
    ]);
    setProblem(outcome.state === 'shown' ? null : notNotedWords(outcome.state));
    if (outcome.state !== 'shown') return;
    time.onCommit(null);
    formMemory.forget(form);
  };
  return (
    <EntryForm label="Time worked" className={styles.form} missing={missing} onEnter={enter}>
      <ChoiceField label="Work" value={element} choices={elementChoices} onCommit={setElement} />
      <NumberField
        label={timeTable.label}
        unit="min"
        {...time}
        {...numberLimits(hoursSchema, ['minutes'])}
        width="narrow"
        caution={cautionOf(minutes, on.formatter)}
      />
      <div className={styles.ends}>
        <Button type="submit" blockedBy={missing}>
          Note the time
        </Button>
        {problem !== null && <p role="alert">{problem}</p>}
      </div>
    </EntryForm>
  );
}

/** Every time that was noted of the run, each to be taken back. */
export function TimesNoted({ on }: Readonly<{ on: AfterRunOnScreen }>) {
  const { workspace, figures, locale } = on;
  return (
    <ul className={styles.times}>
      {figures.facts.hours.map(({ id, body }) => {
        const words = `${elementName(body.element)}, ${minutesWords(body.minutes, locale)}`;
        return (
          <li key={id}>
            {words}
            <Button
              kind="quiet"
              spoken={`Take back: ${words}`}
              onPress={() =>
                void workspace.note('Take back a time', [{ kind: 'takeBack', body: { entryId: id } }])
              }
            >
              Take back
            </Button>
          </li>
        );
      })}
    </ul>
  );
}

// Helpers

/** Fewer are more likely hours. */
const FEW_MINUTES = 5;

function cautionOf(minutes: number | null, formatter: Formatter): string | undefined {
  if (minutes === 0) return timeTable.none;
  if (minutes !== null && minutes > LONG_DAY_MINUTES) return timeTable.longDay;
  if (minutes !== null && minutes >= WHOLE_NIGHT_MINUTES) return timeTable.wholeNight;
  return minutes !== null && minutes > 0 && minutes < FEW_MINUTES
    ? timeTable.few(formatter.number(minutes, 1))
    : undefined;
}
