'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { CardSection } from '@/app/_controls/CardSection';
import { Answer } from '@/app/_docket/common/Answer';
import type { EveningOnScreen } from '@/app/_evening/eveningOnScreen';
import { laterParts } from '@/app/_evening/laterParts';
import { halfTyped } from '@/app/_fields/formMemory';
import { PickRow } from '@/app/_fields/PickRow';
import { TextField } from '@/app/_fields/TextField';
import { LaterPart } from '@/app/_network/LaterPart';
import { decisionWords } from '@/app/_words/stall/closedWords';
import { decideAnswer, leaveOutWords, lessonWords } from '@/app/_words/stall/evening/resultWords';
import { slipNames } from '@/app/_words/stall/evening/slipNames';
import { type EveningAnswers, eveningAnswersSchema } from '@/lib/stall/evening/eveningAnswers';
import { textLimits } from '@/shared/limits';
import { DayNotes } from './DayNotes';
import styles from './Slips.module.css';

type Decision = keyof typeof decisionWords;

/** What the day teaches, who wants something made, and whether to go again. */
export function DecideSlip({ on }: Readonly<{ on: EveningOnScreen }>) {
  const { evening, answers, say, past, formatter, locale } = on;
  const [left, setLeft] = useState<readonly string[]>([]);
  const lessons = evening.lessons
    .map((lesson) => ({ lesson, ...lessonWords(lesson, evening, formatter, locale) }))
    .filter(({ key, what }) => !left.includes(key) && !answers.note.includes(what));
  const limits = textLimits(eveningAnswersSchema, ['note']);
  const noted = (what: string) =>
    `${answers.note.trimEnd()}${answers.note.trim() === '' ? '' : '\n'}${what}.`;
  return (
    <CardSection
      numeral={6}
      id="evening-decide"
      heading={slipNames.decide.heading}
      answer={<Answer words={decideAnswer(evening, past, answers.decision)} />}
    >
      <LaterPart part={laterParts.fairs} what="What other fairs brought" props={{ on }} />
      {lessons.length > 0 && (
        <ul className={styles.lessons}>
          {lessons.map(({ lesson, key, what, why }) => (
            <li key={key}>
              <p>
                {what}
                <span className={styles.why}>{why}</span>
              </p>
              <Button
                spoken={`Note it: ${what}`}
                blockedBy={noted(what).length > limits.longest ? 'The note is full.' : undefined}
                onPress={() => say({ note: noted(what) })}
              >
                Note it
              </Button>
              {lesson.kind === 'more' && lesson.atPace > 0 ? (
                <Button
                  kind="quiet"
                  spoken={`${leaveOutWords(lesson.leftOut !== null)}: ${what}`}
                  onPress={() => say(learning(answers, key, lesson.leftOut !== null))}
                >
                  {leaveOutWords(lesson.leftOut !== null)}
                </Button>
              ) : (
                <Button
                  kind="quiet"
                  spoken={`Leave it: ${what}`}
                  onPress={() => setLeft((now) => [...now, key])}
                >
                  Leave it
                </Button>
              )}
            </li>
          ))}
        </ul>
      )}
      {evening.count.leads.length > 0 && (
        <LaterPart part={laterParts.leads} what="Who wants something made" props={{ on }} />
      )}
      <DayNotes on={on} />
      <TextField
        label="Note for next time"
        rows={3}
        width="full"
        value={answers.note}
        {...limits}
        half={halfTyped(on.form, 'note')}
        onCommit={(note) => say({ note })}
      />
      <div className={styles.reasons}>
        <PickRow<Decision | ''>
          label="Go again?"
          value={answers.decision ?? ''}
          choices={(['again', 'notAgain', 'later'] as const).map((value) => ({
            value,
            label: decisionWords[value],
          }))}
          onPick={(decision) => say({ decision: decision === '' ? null : decision })}
        />
      </div>
    </CardSection>
  );
}

// Helpers

/** @returns the answers by which the next plans learn what is lost of some goods, or do not */
function learning({ notLost, lostAfterAll }: EveningAnswers, key: string, isLearned: boolean) {
  const without = (keys: readonly string[]) => keys.filter((one) => one !== key);
  return isLearned
    ? { notLost: without(notLost), lostAfterAll: [...without(lostAfterAll), key] }
    : { notLost: [...without(notLost), key], lostAfterAll: without(lostAfterAll) };
}
