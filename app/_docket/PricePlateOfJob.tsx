'use client';

import { useState } from 'react';
import type { JobAnswer } from '@/lib/priceJob';
import { fromMinor, toMinor } from '@/shared/money';
import type { JobInput } from '@/shared/schemas/request';
import { ChoiceField } from '../_fields/ChoiceField';
import { useTextContext } from '../_fields/useTextContext';
import { PricePlate } from '../_figures/PricePlate';
import { PriceRuler } from '../_figures/PriceRuler';
import { speakerOf } from '../_text/speaker';
import { useJobDesk } from './jobDesk';
import styles from './PricePlateOfJob.module.css';
import { pieceWord } from './pieceWord';
import { plateFigures } from './plateFigures';
import { rulerWords } from './rulerWords';

type PricePlateOfJobProps = Readonly<{
  /** The newest answer with prices and the documents it answers; null before the first. */
  priced: Readonly<{ input: JobInput; answer: JobAnswer }> | null;
  /** True while a stop withholds newer prices. */
  stale: boolean;
}>;

/** The price of the job on its plate, with the flag that moves it. */
export function PricePlateOfJob({ priced, stale }: PricePlateOfJobProps) {
  const { jobId, input, maker } = useJobDesk();
  const context = useTextContext();
  const speak = speakerOf(context);
  const [lineId, setLineId] = useState<string | null>(null);
  const { lines } = input.job;
  const index = Math.max(
    0,
    lines.findIndex(({ id }) => id === lineId),
  );
  const line = lines[index];
  const sheet = priced?.answer.costSheet;
  const prices = priced?.answer.prices;
  if (line === undefined) return null;
  // Old figures go with the price they were made for.
  const shownLine = (stale ? priced?.input.job.lines.find(({ id }) => id === line.id) : line) ?? line;
  const word = pieceWord(input.blanks[line.blankId]);
  const several = lines.length > 1;
  const whose = several ? line.name : `a ${word.one}`;
  if (!priced || !sheet || !prices) return <EmptyPlate stale={stale} />;

  const figures = plateFigures(prices, sheet, shownLine, sheet.jobValues.targetMargin ?? 0, {
    speak,
    locale: context.locale,
  });
  const { currency } = prices;
  const channel = input.workshop.channels.find(({ id }) => id === input.job.channelId);
  const step = input.workshop.policy.priceStep;
  const move = (withoutTax: number) => {
    const written = fromMinor(toMinor(figures.terms.written(withoutTax), currency), currency);
    maker.setField(
      { kind: 'job', id: jobId },
      `Price of ${whose}`,
      ['lines', index, 'askedPrice'],
      // Nothing at all is no price a document can hold.
      written > 0 ? written : step,
    );
  };
  const meaning = `${figures.marginWords}, pays you ${figures.pay} an hour`;
  return (
    <>
      <PricePlate
        price={figures.price}
        per={`${currency}${several ? ' ·' : ''} ${whose}${figures.isDecided ? '' : ', target'}`}
        underPrice={figures.marginWords}
        pay={figures.pay}
        payPer="an hour"
        underPay={figures.hours}
        stale={stale ? 'last good price' : undefined}
      >
        <PriceRuler
          label={`Price of ${whose}`}
          marks={figures.marks}
          flag={{ value: figures.flag, onMove: move }}
          bounds={figures.bounds}
          step={figures.terms.withoutTax(step)}
          meaning={figures.isDecided ? meaning : `${meaning}, target, no price decided yet`}
          format={figures.format}
          payToWorkBelow={figures.payToWorkBelow}
          stale={stale ? 'last good price' : undefined}
        />
      </PricePlate>
      <div className={styles.under}>
        {several && (
          <div className={styles.whose}>
            <span aria-hidden="true">The flag moves the price of</span>
            <ChoiceField
              label="The flag moves the price of"
              labelled
              value={line.id}
              choices={lines.map(({ id, name }) => ({ value: id, label: name }))}
              onCommit={setLineId}
            />
          </div>
        )}
        <p className={styles.words}>
          {stale
            ? 'A stop stands, so these are the last good figures. See the checks below.'
            : rulerWords(figures, channel, speak)}
        </p>
      </div>
    </>
  );
}

// Helpers

/** Takes the room of the plate, so that nothing moves when the first price comes. */
function EmptyPlate({ stale }: Readonly<{ stale: boolean }>) {
  return (
    <>
      <PricePlate
        price="–"
        per=""
        underPrice="margin – · markup –"
        pay="–"
        payPer="an hour"
        underPay="your time"
        stale={stale ? 'no price yet' : undefined}
      >
        <div className={styles.noRuler} />
      </PricePlate>
      <div className={styles.under}>
        <p className={styles.words}>
          {stale ? 'A stop stands: the price comes as soon as it is mended.' : 'Working out the price…'}
        </p>
      </div>
    </>
  );
}
