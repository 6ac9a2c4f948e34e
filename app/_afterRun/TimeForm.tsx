import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { NumberField } from '@/app/_fields/NumberField';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { elementChoices, elementWords } from '@/app/_words/afterRun/afterRunWords';
import { minutesWords } from '@/app/_words/minutesWords';
import { notNotedWords } from '@/app/_words/orders/notes/orderNoteWords';
import type { RunFacts } from '@/lib/making/runFacts';
import { numberLimits } from '@/shared/limits';
import { hoursSchema, type WorkElement } from '@/shared/schemas/runEvents';
import styles from './AfterRun.module.css';

type TimeFormProps = Readonly<{
  workspace: ReadyWorkspace;
  runId: string;
  today: string;
  locale: string;
  hours: RunFacts['hours'];
}>;

/** Time worked on the run, by element or all the rest in one. */
export function TimeForm({ workspace, runId, today, locale, hours }: TimeFormProps) {
  const [element, setElement] = useState<WorkElement | null>(null);
  const [minutes, setMinutes] = useState<number | null>(null);
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
          ...{ day: today, minutes, for: { kind: 'run', id: runId }, element },
          ...{ placementId: null, pieces: null, from: 'typed', note: '' },
        },
      },
    ]);
    setProblem(outcome.state === 'shown' ? null : notNotedWords(outcome.state));
    if (outcome.state === 'shown') setMinutes(null);
  };
  return (
    <>
      <EntryForm label="Time worked" className={styles.form} missing={missing} onEnter={enter}>
        <ChoiceField label="Work" value={element} choices={elementChoices} onCommit={setElement} />
        <NumberField
          label="Time"
          unit="min"
          value={minutes}
          {...numberLimits(hoursSchema, ['minutes'])}
          width="narrow"
          caution={cautionOf(minutes)}
          onCommit={setMinutes}
        />
        <div className={styles.ends}>
          <Button type="submit" blockedBy={missing}>
            Note the time
          </Button>
          {problem !== null && <p role="alert">{problem}</p>}
        </div>
      </EntryForm>
      {hours.length > 0 && (
        <ul className={styles.times}>
          {hours.map(({ id, body }) => (
            <li key={id}>
              {`${elementWords(body.element)}, ${minutesWords(body.minutes, locale)}`}
              <Button
                kind="quiet"
                spoken={`Take back: ${elementWords(body.element)}, ${minutesWords(body.minutes, locale)}`}
                onPress={() =>
                  void workspace.note('Take back a time', [{ kind: 'takeBack', body: { entryId: id } }])
                }
              >
                Take back
              </Button>
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

// Helpers

function cautionOf(minutes: number | null): string | undefined {
  if (minutes === 0) return 'No time makes that work look free. Leave it out where it took none.';
  return minutes !== null && minutes >= 480
    ? 'That is a whole night. It lowers your pay an hour: check whether a clock was left running.'
    : undefined;
}
