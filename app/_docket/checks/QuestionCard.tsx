'use client';

import { useId, useRef, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { fieldIdOf } from '@/app/_docket/common/fieldId';
import { useJob } from '@/app/_docket/common/useJob';
import { moreQuestionsWords, questionWords } from '@/app/_words/questions/questionWords';
import { isTyped, type Question } from '@/lib/check/questions/question';
import type { Change } from '@/shared/finding';
import styles from './QuestionCard.module.css';

/** Two rows of two; more than this wait behind a button that says how many. */
const MOST_SHOWN = 4;

type QuestionCardProps = Readonly<{
  heading: string;
  questions: readonly Question[];
  /** Called when the last one is answered and the card goes. */
  onLast: () => void;
}>;

/** What nobody has told yet, asked with a button for each answer. */
export function QuestionCard({ heading, questions, onLast }: QuestionCardProps) {
  const { jobId, input, workspace, show } = useJob();
  const headingId = useId();
  const head = useRef<HTMLHeadingElement>(null);
  const [isWhole, setWhole] = useState(false);
  const answer = (question: string, said: string, changes: readonly Change[]) => {
    workspace.applyFix(jobId, `${question} ${said}`, changes);
    // The pressed button goes; the next question stands under the heading.
    if (questions.length > 1) head.current?.focus();
    else onLast();
  };
  if (questions.length === 0) return null;
  const shown = isWhole ? questions : questions.slice(0, MOST_SHOWN);
  const more = questions.length - shown.length;
  return (
    <section className={styles.card} aria-labelledby={headingId}>
      <h3 className={styles.heading} id={headingId} ref={head} tabIndex={-1}>
        {heading}
      </h3>
      <ul className={styles.list}>
        {shown.map((asked) => {
          const { question, why, yes, no, unsure } = questionWords(asked);
          const ways = [
            { said: yes, way: asked.yes },
            { said: no, way: asked.no },
            { said: unsure, way: asked.unsure },
          ];
          const press = (said: string, way: Question['yes']) => {
            if (!isTyped(way)) return answer(question, said, way);
            const id = fieldIdOf(way, input.job);
            if (id !== null) show(id);
          };
          return (
            <li className={styles.row} key={`${asked.id} ${asked.of}`}>
              <p>
                {question} <span className={styles.why}>{why}</span>
              </p>
              <div className={styles.ways}>
                {ways.map(
                  ({ said, way }) =>
                    said !== null &&
                    way !== null && (
                      <Button key={said} spoken={`${said}: ${question}`} onPress={() => press(said, way)}>
                        {said}
                      </Button>
                    ),
                )}
              </div>
            </li>
          );
        })}
      </ul>
      {more > 0 && (
        <Button
          kind="quiet"
          onPress={() => {
            setWhole(true);
            head.current?.focus();
          }}
        >
          {moreQuestionsWords(more)}
        </Button>
      )}
    </section>
  );
}
