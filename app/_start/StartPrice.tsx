'use client';

import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { HeatFigure } from '@/app/_controls/HeatFigure';
import { useTextContext } from '@/app/_fields/useTextContext';
import { useLazy } from '@/app/_network/useLazy';
import { usePricedJob } from '@/app/_pricing/usePricedJob';
import { pieceWords } from '@/app/_words/docket/pieceWords';
import { lazyFindingWords } from '@/app/_words/findings/lazyFindingWords';
import { formatterFor } from '@/app/_words/formatter';
import { startPriceWords } from '@/app/_words/start/startPriceWords';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import { isStanding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import styles from './StartPrice.module.css';
import { StartRuler } from './StartRuler';
import { StartStops } from './StartStops';
import type { Start } from './useStart';

/** The price of what is chosen so far, beside the slip or, on a phone, at the thumb; and the way into the job. */
export function StartPrice({ start }: Readonly<{ start: Start }>) {
  const router = useRouter();
  const [problem, setProblem] = useState<string | null>(null);
  const { input } = start;
  const open = async () => {
    const outcome = await start.open();
    if ('problem' in outcome) setProblem(outcome.problem);
    else router.push(`/jobs/${outcome.jobId}`);
  };
  return (
    <section className={styles.card} aria-label="Price" data-thumb-bar>
      {input === null ? (
        <div className={styles.figures}>
          <p className={styles.line}>
            <span className={styles.price} data-none>
              –.––
            </span>
          </p>
          <p className={styles.pay}>The price stands here as soon as you say what you make.</p>
        </div>
      ) : (
        <Priced input={input} />
      )}
      <div className={styles.way}>
        <Button
          kind="strong"
          onPress={() => void open()}
          blockedBy={input === null ? 'Say first what you make.' : undefined}
        >
          Open the job
        </Button>
        {start.isFirst && <p className={styles.quiet}>The example stays under Jobs.</p>}
      </div>
      <p className={styles.problem} role="alert">
        {problem}
      </p>
    </section>
  );
}

// Helpers

function Priced({ input }: Readonly<{ input: JobInput }>) {
  const context = useTextContext();
  const formatter = formatterFor(context);
  const { answer, lastPriced, failure } = usePricedJob(input);
  const piece = pieceWords(input.blanks[input.job.lines[0]?.blankId ?? '']).one;
  const prices = answer?.prices ?? (answer === null ? lastPriced?.answer.prices : null) ?? null;
  const words = prices && startPriceWords(prices, input, piece, formatter, context.locale);
  // Fetched beside the first sums, so that a stop is told as soon as it is found.
  const stopWords = useLazy(lazyFindingWords);
  const stops = answer?.findings.filter((finding) => isStanding(finding)) ?? [];
  if (failure !== null) {
    return (
      <div className={styles.figures}>
        <AnswerMissing what="The price could not be worked out" failure={failure} />
      </div>
    );
  }
  if (words === null || prices === null) {
    return (
      <div className={styles.figures}>
        <p className={styles.line}>
          <span className={styles.price} data-none>
            {stops.length > 0 ? 'no price' : '–.––'}
          </span>{' '}
          {stops.length === 0 && <span className={styles.per}>a {piece}</span>}
        </p>
        {stops.length > 0 && <StartStops stops={stops} words={stopWords} />}
      </div>
    );
  }
  return (
    <div className={styles.figures} aria-live="polite">
      <p className={styles.line}>
        <span className={styles.price}>
          <HeatFigure text={words.price} face="display" />
        </span>{' '}
        <span className={styles.per}>{words.per}</span>
      </p>
      <p className={styles.pay}>
        <span className={styles.would}>would pay you</span> <strong>{words.pay}</strong> an hour
      </p>
      <div className={styles.more}>
        <StartRuler
          marks={words.marks}
          offer={prices.offer}
          currency={prices.currency}
          locale={context.locale}
        />
        <p className={styles.total}>
          <strong>{words.total}</strong> {words.totalOf}
        </p>
        <p className={styles.typical}>{words.typical}</p>
      </div>
    </div>
  );
}
