'use client';

import { useMemo } from 'react';
import { FindingRow } from '@/app/_controls/FindingRow';
import styles from '@/app/_orderPapers/OrderPapers.module.css';
import { useOrderStudy } from '@/app/_studies/useOrderStudy';
import type { TextContext } from '@/app/_words/formatter';
import { quoteStandingWords } from '@/app/_words/orders/quote/quoteStandingWords';
import type { OutOf } from '@/lib/orders/orderFacts';
import { quoteAsChosen } from '@/lib/quotes/following/followingPapers';
import type { QuoteAsked } from '@/lib/quotes/quoteAsked';
import { versionText } from '@/shared/orderNumberText';

type QuoteStandingProps = Readonly<{
  lastQuote: OutOf<'quote'>;
  /** The alternative that was accepted of it. */
  chosenId: string | null;
  asked: QuoteAsked;
  context: TextContext;
}>;

/** Whether the version that went out last still holds at today’s rates, and what has moved since. */
export function QuoteStanding({ lastQuote, chosenId, asked, context }: QuoteStandingProps) {
  const quote = useMemo(() => quoteAsChosen(lastQuote.body, chosenId), [lastQuote.body, chosenId]);
  const { newest, failure } = useOrderStudy('stillHolds', asked, quote);
  const version = versionText(lastQuote.number, lastQuote.body.order);
  const standing =
    newest !== null && versionText(newest.question.number, newest.question.order) === version
      ? newest.answer
      : null;
  return (
    <section aria-labelledby="quote-standing" aria-busy={standing === null && failure === null}>
      <h3 className={styles.sub} id="quote-standing">
        Does version {version} still hold?
      </h3>
      {standing === null ? (
        <p className={styles.quiet}>
          {failure === null
            ? 'It is being held against today’s rates.'
            : 'It could not be held against today’s rates.'}
        </p>
      ) : (
        <ul className={styles.findings}>
          {quoteStandingWords(standing, quote, context).map(({ key, severity, sentence, detail }) => (
            <FindingRow key={key} {...{ severity, sentence, detail }} />
          ))}
        </ul>
      )}
    </section>
  );
}
