'use client';

import { useId, useRef } from 'react';
import { Button } from '@/app/_controls/Button';
import { useJob } from '@/app/_docket/common/useJob';
import { questionWords } from '@/app/_words/questions/questionWords';
import type { Question } from '@/lib/check/questions/question';
import type { Change } from '@/shared/finding';
import styles from './QuestionCard.module.css';

/** More than this are asked one after the other, as those before are answered. */
const MOST_ASKED = 3;

type QuestionCardProps = Readonly<{
  heading: string;
  questions: readonly Question[];
  /** Called when the last one is answered and the card goes. */
  onLast: () => void;
}>;

/** What nobody has told yet, asked with a button for each answer. */
export function QuestionCard({ heading, questions, onLast }: QuestionCardProps) {
  const { jobId, workspace } = useJob();
  const headingId = useId();
  const head = useRef<HTMLHeadingElement>(null);
  const answer = (question: string, said: string, changes: readonly Change[]) => {
    workspace.applyFix(jobId, `${question} ${said}`, changes);
    // The pressed button goes; the next question stands under the heading.
    if (questions.length > 1) head.current?.focus();
    else onLast();
  };
  if (questions.length === 0) return null;
  return (
    <section className={styles.card} aria-labelledby={headingId}>
      <h3 className={styles.heading} id={headingId} ref={head} tabIndex={-1}>
        {heading}
      </h3>
      <ul className={styles.list}>
        {questions.slice(0, MOST_ASKED).map((asked) => {
          const { question, why, yes, no, unsure } = questionWords(asked);
          const ways = [
            { said: yes, changes: asked.yes },
            { said: no, changes: asked.no },
            { said: unsure, changes: asked.unsure },
          ];
          return (
            <li className={styles.row} key={`${asked.id} ${asked.of}`}>
              <p>
                {question} <span className={styles.why}>{why}</span>
              </p>
              <div className={styles.ways}>
                {ways.map(
                  ({ said, changes }) =>
                    said !== null &&
                    changes !== null && (
                      <Button
                        key={said}
                        spoken={`${said}: ${question}`}
                        onPress={() => answer(question, said, changes)}
                      >
                        {said}
                      </Button>
                    ),
                )}
              </div>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
