'use client';

import { useState } from 'react';
import type { SeekQuestion } from '@/lib/price/seek/seekAnswer';
import { fromMinor, toPriceEnding } from '@/shared/money';
import type { Rate } from '@/shared/schemas/rate';
import { useMaker } from '../_documents/useMaker';
import { useToday } from '../_documents/useToday';
import { ChoiceField } from '../_fields/ChoiceField';
import { FieldGroup } from '../_fields/FieldGroup';
import { MeasureField } from '../_fields/MeasureField';
import { NumberField } from '../_fields/NumberField';
import { useTextContext } from '../_fields/useTextContext';
import { Button } from '../_shell/Button';
import { useStudy } from '../_studies/useStudy';
import { speakerOf } from '../_text/speaker';
import { AnswerMissing } from '../_workers/AnswerMissing';
import type { DocketPart } from './docketPart';
import styles from './SeekPart.module.css';
import { seekWords } from './seekWords';

type Sought = SeekQuestion['seek'];

const questions: readonly { readonly value: Sought; readonly label: string }[] = [
  { value: 'priceForMargin', label: 'the price for a margin' },
  { value: 'priceForPay', label: 'the price for a pay an hour' },
  { value: 'batchForMargin', label: 'the batch for a margin at a price' },
  { value: 'largestWage', label: 'the largest wage a price can bear' },
];

/** Questions turned round: what it takes to reach a margin, a pay or a batch. */
export function SeekPart({ jobId, answer, madeOf, stale }: DocketPart) {
  const context = useTextContext();
  const speak = speakerOf(context);
  const today = useToday();
  const { changeJob } = useMaker();
  const { rates, policy, currency } = madeOf.workshop;
  const [sought, setSought] = useState<Sought>('priceForMargin');
  const [margin, setMargin] = useState<number | null>(rates.targetMargin?.value ?? 0.3);
  const [perHour, setPerHour] = useState<number | null>(rates.wage?.value ?? 18);
  const [price, setPrice] = useState<number | null>(null);
  const question = questionOf();
  const { newest, failure } = useStudy(
    'seek',
    question === null || answer?.prices == null ? null : madeOf,
    question ?? { seek: 'priceForMargin', margin: 0 },
  );
  const isCurrent = newest?.input === madeOf && !stale;
  const told = newest === null || question === null ? null : newest.answer;
  const price2 = told === null ? null : priceFound();
  const wage = told?.seek === 'largestWage' && told.found.ok ? told.found.value : null;
  const needsMargin = sought === 'priceForMargin' || sought === 'batchForMargin';
  const needsPrice = sought === 'batchForMargin' || sought === 'largestWage';
  return (
    <section className={styles.seek} aria-labelledby="seek-heading">
      <h3 id="seek-heading">Ask the sums</h3>
      <FieldGroup>
        <ChoiceField label="I look for" value={sought} choices={questions} onCommit={setSought} />
        {needsMargin && (
          <MeasureField
            label="Margin"
            kind="share"
            width="narrow"
            value={margin}
            min={0}
            max={1}
            onCommit={setMargin}
          />
        )}
        {sought === 'priceForPay' && (
          <NumberField
            label="Pay an hour"
            width="narrow"
            unit={currency}
            value={perHour}
            min={0}
            max={1e6}
            onCommit={setPerHour}
          />
        )}
        {needsPrice && (
          <NumberField
            label="Price a piece"
            width="narrow"
            unit={currency}
            value={price}
            above={0}
            max={1e9}
            hint="Empty for the asked prices."
            onCommit={setPrice}
          />
        )}
      </FieldGroup>
      <AnswerMissing what="It could not be worked out" failure={failure} />
      <p className={styles.answer} role="status">
        {failure !== null
          ? ' '
          : question === null
            ? 'A figure is missing in the question.'
            : told === null
              ? ' '
              : seekWords(told, question, speak)}
      </p>
      <div className={styles.take}>
        {price2 !== null && isCurrent && (
          <Button
            onPress={() =>
              changeJob(jobId, `Asked price ${speak.money(price2)}`, (job) => ({
                ...job,
                lines: job.lines.map((line) => ({ ...line, askedPrice: price2, upCharges: [] })),
              }))
            }
          >
            Ask {speak.money(price2)} for every piece
          </Button>
        )}
        {wage !== null && isCurrent && (
          <Button
            onPress={() => {
              const rate: Rate<'money/h'> = {
                value: Number(wage.toPrecision(6)),
                unit: 'money/h',
                date: today,
                origin: 'yours',
              };
              changeJob(jobId, 'Pay in this job', (job) => ({ ...job, rates: { ...job.rates, wage: rate } }));
            }}
          >
            Count with {speak.money(wage)} an hour in this job
          </Button>
        )}
      </div>
    </section>
  );

  /** The price that was found, lifted to the maker's ending. */
  function priceFound(): number | null {
    if (told?.seek !== 'priceForMargin' && told?.seek !== 'priceForPay') return null;
    if (!told.found.ok || !(told.found.value.each > 0)) return null;
    return fromMinor(toPriceEnding(told.found.value.each, policy.priceStep, currency), currency);
  }

  function questionOf(): SeekQuestion | null {
    switch (sought) {
      case 'priceForMargin':
        return margin === null ? null : { seek: sought, margin };
      case 'priceForPay':
        return perHour === null ? null : { seek: sought, perHour };
      case 'batchForMargin':
        return margin === null ? null : { seek: sought, margin, price };
      case 'largestWage':
        return { seek: sought, price };
      default:
        return sought satisfies never;
    }
  }
}
