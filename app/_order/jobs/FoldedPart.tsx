import type { ReactNode } from 'react';
import { Disclosure } from '@/app/_controls/Disclosure';
import type { AnswerWords } from '@/app/_words/docket/answerWords';
import styles from './Jobs.module.css';

type FoldedPartProps = Readonly<{
  id: string;
  heading: string;
  answer: AnswerWords;
  /** From the start. */
  open?: boolean;
  children: ReactNode;
}>;

/** A part that is not needed now: one line that says what it comes to, the rest folded away. */
export function FoldedPart({
  id,
  heading,
  answer: { before = '', key, after = '' },
  open = false,
  children,
}: FoldedPartProps) {
  return (
    // Takes the focus of whoever took something out beneath it.
    <section id={`${id}-part`} className={styles.folded} aria-label={heading} tabIndex={-1}>
      <Disclosure id={id} level={2} open={open} heading={heading} line={`${before}${key}${after}`}>
        {children}
      </Disclosure>
    </section>
  );
}
