'use client';

import { useRef, useState } from 'react';
import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { Answer } from '@/app/_docket/common/Answer';
import { useChecks } from '@/app/_docket/common/useChecks';
import { useJob } from '@/app/_docket/common/useJob';
import { useQuestions } from '@/app/_docket/common/useQuestions';
import { checkAnswerWords, notesWords } from '@/app/_words/docket/checkAnswerWords';
import type { CheckGroup } from '@/app/_words/docket/checkGroups';
import { jobQuestionsHeading, workshopQuestionsHeading } from '@/app/_words/questions/questionWords';
import { isStanding } from '@/shared/finding';
import { CheckRow } from './CheckRow';
import styles from './ChecksSection.module.css';
import { QuestionCard } from './QuestionCard';

/** Section 2: what stops the job, what there is to settle, and in one line what is worth knowing. */
export function ChecksSection() {
  const { jobId, workspace } = useJob();
  const groups = useChecks();
  const questions = useQuestions();
  const state = useRef<HTMLSpanElement>(null);
  const [refused, setRefused] = useState(false);
  const stops = groups.filter(({ finding }) => isStanding(finding));
  const cautions = groups.filter(({ finding }) => finding.severity === 'caution');
  const passed = groups.filter(({ finding }) => finding.waivedBecause !== undefined);
  const notes = groups.filter(({ finding }) => finding.severity === 'note');

  const fix = (label: string, { all }: CheckGroup) => {
    const outcome = workspace.applyFix(
      jobId,
      label,
      all.flatMap((finding) => finding.fix?.changes ?? []),
    );
    setRefused(outcome.state === 'refused');
    // The button goes with what it mended; without this a keyboard would start again at the top of the page.
    state.current?.focus();
  };
  const row = (group: CheckGroup, index: number) => (
    <CheckRow key={keyOf(group, index)} group={group} onFix={(label) => fix(label, group)} />
  );
  return (
    <CardSection
      numeral={2}
      heading="Checks"
      answer={
        <span className={styles.state} tabIndex={-1} ref={state}>
          <Answer words={checkAnswerWords(groups, questions.count)} />
        </span>
      }
      id="checks"
    >
      {refused && (
        <p className={styles.refused} role="alert">
          That button cannot be used just now: with it the job could not be kept. Change the field by hand.
        </p>
      )}
      <ul className={styles.list}>{[...stops, ...cautions, ...passed].map(row)}</ul>
      <QuestionCard
        heading={jobQuestionsHeading(questions.job.length)}
        questions={questions.job}
        onLast={() => state.current?.focus()}
      />
      <QuestionCard
        heading={workshopQuestionsHeading(questions.workshop.length)}
        questions={questions.workshop}
        onLast={() => state.current?.focus()}
      />
      {notes.length > 0 && (
        <FoldRow
          place={jobId}
          folds={[
            {
              id: 'notes',
              name: notesWords(notes),
              body: () => <ul className={styles.list}>{notes.map(row)}</ul>,
            },
          ]}
        />
      )}
    </CardSection>
  );
}

// Helpers

/** Rules tell of one place once; where not, their order keeps them apart. */
const keyOf = ({ finding: { id, variant, where } }: CheckGroup, index: number): string =>
  [id, variant, where.document, where.id, where.size, ...where.path, where.path.length === 0 && index].join(
    ' ',
  );
