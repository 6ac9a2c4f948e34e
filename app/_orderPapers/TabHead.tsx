import type { ReactNode } from 'react';
import type { AnswerLine } from '@/app/_words/orders/papers/followingWords';
import styles from './OrderPapers.module.css';

type TabHeadProps = Readonly<{ answer: AnswerLine | null; children?: ReactNode }>;

/** What a paper comes to, in one line, then what can be set of it. */
export function TabHead({ answer, children }: TabHeadProps) {
  return (
    <>
      {answer !== null && (
        <p className={styles.answer}>
          <strong>{answer.strong}</strong>
          {answer.rest}
        </p>
      )}
      {children}
    </>
  );
}
