'use client';

import { useId, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { draftName } from '@/app/_words/store/draftNames';
import type { Arriving } from '@/app/_words/store/fateWords';
import { choiceWords, meetingWords } from '@/app/_words/store/meetingWords';
import type { Choice, DraftMeeting } from '@/lib/copies/arrival';
import { type Choices, choiceOf } from '@/lib/copies/arrivalGroups';
import styles from './DraftChoices.module.css';
import { DraftDifferences } from './DraftDifferences';

type DraftChoicesProps = Readonly<{
  meetings: readonly DraftMeeting[];
  chosen: Choices;
  it: Arriving;
  onChoose: (id: string, choice: Choice) => void;
}>;

/** As many come at once, the next when they are asked for: hundreds would hold the page up. */
const MOST_SHOWN = 20;

/** Every draft that is not the same, with what differs and what can be chosen. */
export function DraftChoices({ meetings, chosen, it, onChoose }: DraftChoicesProps) {
  const [most, setMost] = useState(MOST_SHOWN);
  const formatter = formatterFor(useTextContext());
  const more = meetings.length - most;
  return (
    <>
      <ul className={styles.drafts}>
        {meetings.slice(0, most).map((meeting) => (
          <li key={meeting.id} className={styles.draft}>
            <DraftChoice {...{ meeting, it }} choice={choiceOf(meeting, chosen)} onChoose={onChoose} />
          </li>
        ))}
      </ul>
      {more > 0 && (
        <Button onPress={() => setMost(most + MOST_SHOWN)}>
          Show {formatter.count(Math.min(more, MOST_SHOWN), 'more difference')}
        </Button>
      )}
    </>
  );
}

// Helpers

type DraftChoiceProps = Readonly<{
  meeting: DraftMeeting;
  choice: Choice;
  it: Arriving;
  onChoose: (id: string, choice: Choice) => void;
}>;

function DraftChoice({ meeting, choice, it, onChoose }: DraftChoiceProps) {
  const group = useId();
  return (
    <fieldset>
      <legend className={styles.name}>
        <bdi>{draftName(meeting)}</bdi>
      </legend>
      <p className={styles.state}>{meetingWords(it)[meeting.state]}</p>
      <DraftDifferences {...{ meeting, it }} />
      {meeting.choices.length > 1 && (
        <div className={styles.choices}>
          {meeting.choices.map((one) => (
            <label key={one} className={styles.choice}>
              <input
                type="radio"
                name={group}
                checked={one === choice}
                onChange={() => onChoose(meeting.id, one)}
              />
              {choiceWords(meeting.state, one, it)}
            </label>
          ))}
        </div>
      )}
    </fieldset>
  );
}
