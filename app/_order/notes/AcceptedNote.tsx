'use client';

import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { useTyped } from '@/app/_fields/useTyped';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { agreedJobWords } from '@/app/_words/orders/notes/agreedJobWords';
import { acceptedLateWords } from '@/app/_words/orders/notes/orderNoteWords';
import { versionText } from '@/shared/orderNumberText';
import { z } from '@/shared/schemas/z';
import { AnswerFields } from './AnswerFields';
import { agreedEdits, agreedJobs } from './agreedEdits';
import { NoteFrame } from './NoteFrame';
import styles from './Notes.module.css';
import type { StepNoteProps } from './stepNote';
import { useAnswer } from './useAnswer';
import { useNoting } from './useNoting';

const AS_ASKED = 'asked';

/** The customer said yes: to which version, to which of its choices, by whom and how. */
export function AcceptedNote({ on, form, onDone, onLeave }: StepNoteProps) {
  const { facts, today, formatter, locale } = on;
  const quotes = facts.happened
    .flatMap((one) => (one.kind === 'quote' && !one.withdrawn ? [one] : []))
    .toReversed();
  const [chosenId, setQuoteId] = useTyped(form, 'quote', z.string(), '');
  const [chosen, setChoice] = useTyped(form, 'choice', z.string(), AS_ASKED);
  const answer = useAnswer(on, form);
  const { problem, noteSteps } = useNoting(on, form);
  const quote = quotes.find(({ id }) => id === chosenId) ?? quotes[0];
  const choices =
    quote === undefined
      ? []
      : [
          {
            value: AS_ASKED,
            label: `As asked, ${minorMoney(quote.body.sums.total, quote.body.currency, locale)}`,
          },
          ...quote.body.alternatives.map(({ id, label, sums }) => ({
            value: id,
            label: `${label}, ${minorMoney(sums.total, quote.body.currency, locale)}`,
          })),
        ];
  const choice = choices.some(({ value }) => value === chosen) ? chosen : AS_ASKED;
  const alternativeId = choice === AS_ASKED ? null : choice;
  const becoming = quote === undefined ? [] : agreedJobs(on, quote.body, alternativeId);
  const missing =
    quote === undefined
      ? 'A quote has to go out before it can be accepted.'
      : answer.by.value.trim() === ''
        ? 'Who said so comes first.'
        : undefined;
  return (
    <NoteFrame
      name="Accepted"
      out={quote === undefined ? null : { what: 'quote', on: quote.body.issuedOn }}
      {...{ on, form, missing, problem, onLeave }}
      onEnter={(day) => {
        if (quote === undefined) return;
        const { by, how, proof } = answer;
        const step = {
          what: 'accepted',
          paperId: quote.id,
          alternativeId,
          by: by.value,
          how,
          proof: proof?.attachment ?? null,
        } as const;
        const files = proof === null ? [] : [proof.file];
        if (noteSteps(day, [step], files, agreedEdits(on, becoming, alternativeId))) onDone();
      }}
    >
      <FieldGroup>
        {quotes.length > 1 && (
          <ChoiceField
            label="Which quote"
            value={quote?.id ?? ''}
            choices={quotes.map(({ id, number }) => ({
              value: id,
              label: `Version ${versionText(number, on.standing.number)}`,
            }))}
            onCommit={(id) => {
              setQuoteId(id);
              setChoice(AS_ASKED);
            }}
          />
        )}
        {choices.length > 1 && (
          <ChoiceField label="What they chose" value={choice} choices={choices} onCommit={setChoice} />
        )}
      </FieldGroup>
      {quote !== undefined && quote.body.validUntil < today && (
        <p className={styles.caution}>{acceptedLateWords(quote.body.validUntil, formatter)}</p>
      )}
      {becoming.map((job) => (
        <p key={job.jobId} className={styles.told}>
          {agreedJobWords(job, formatter)}
        </p>
      ))}
      <AnswerFields answer={answer} />
    </NoteFrame>
  );
}
