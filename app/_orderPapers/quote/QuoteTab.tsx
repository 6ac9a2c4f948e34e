'use client';

import { useState } from 'react';
import { FindingRow } from '@/app/_controls/FindingRow';
import { Fold } from '@/app/_controls/Fold';
import { focusField } from '@/app/_controls/focusField';
import { RevealContext } from '@/app/_controls/reveal';
import { useTextContext } from '@/app/_fields/useTextContext';
import type { SureBench } from '@/app/_orderBook/useBench';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import { PaperDesk } from '@/app/_orderPapers/issuing/PaperDesk';
import styles from '@/app/_orderPapers/OrderPapers.module.css';
import type { OrderOnPaper } from '@/app/_orderPapers/orderOnPaper';
import { TabHead } from '@/app/_orderPapers/TabHead';
import { leftOutWords } from '@/app/_words/orders/bench/leftOutWords';
import type { OrderPlace } from '@/app/_words/orders/orderPlaces';
import { askedPiecesWords } from '@/app/_words/orders/quote/askedPiecesWords';
import { quoteAnswer, settingsLine, waitsWords } from '@/app/_words/orders/quote/quoteAnswerWords';
import { quoteDayCautions } from '@/app/_words/orders/quote/quoteDayWords';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import type { QuoteObstacle } from '@/lib/quotes/quoteObstacle';
import { versionText } from '@/shared/orderNumberText';
import { OwnersSide } from './OwnersSide';
import { QuoteObstacles } from './QuoteObstacles';
import { QuoteSettings } from './QuoteSettings';
import { QuoteStanding } from './QuoteStanding';
import { bodyOfDraft, saysTheSame, useQuote } from './useQuote';

type QuoteTabProps = Readonly<{
  of: OrderOnPaper;
  book: OrderBook;
  bench: SureBench;
  isNext: boolean;
  onRoom: (place: OrderPlace) => void;
}>;

/** What the order is asked for: what it comes to, what stands in the way, what it says, and the paper itself. */
export function QuoteTab({ of, book, bench, isNext, onRoom }: QuoteTabProps) {
  const { standing, order, formatter, workspace, locale } = of;
  const context = useTextContext();
  const { asked, made, isStale, failure } = useQuote(of, book, bench);
  const isAwaited = made === null && failure === null;
  const [reveal, setReveal] = useState({ id: null as string | null, turn: 0 });
  const draft = made?.kind === 'ready' ? made.draft : null;
  const obstacles = made?.kind === 'refused' ? made.obstacles : [];
  // Without hours at the bench no day is known, which is told there.
  const untold = leftOutWords(
    bench.leftOut.flatMap((id) => (id === of.orderId ? [] : (book.of(id)?.facts.order.name ?? []))),
  );
  const cautions =
    draft === null || workspace.workshop.blocks === null
      ? []
      : [...quoteDayCautions(order, draft.body, formatter), ...(untold === null ? [] : [untold])];
  const { lastQuote, agreed } = standing;
  const isOut = lastQuote !== null && draft !== null && saysTheSame(lastQuote.body, draft);
  // Beside what it comes to: fewer may rightly be quoted than somebody first thought of.
  const otherwise = askedPiecesWords(
    { order, standing, jobs: of.goods.jobs.map(({ input }) => input.job) },
    formatter,
  );
  const told = [
    ...(draft === null || otherwise === null
      ? []
      : [
          {
            sentence: otherwise,
            detail: 'The quote is for what is in the jobs. Look whether that is right before it goes out.',
          },
        ]),
    ...cautions,
  ];
  const go = (id: string) => {
    setReveal(({ turn }) => ({ id, turn: turn + 1 }));
    // The fold is open then.
    requestAnimationFrame(() => focusField(id));
  };
  return (
    <RevealContext value={reveal}>
      <div className={styles.part} aria-busy={isStale || isAwaited}>
        <TabHead answer={draft === null ? null : quoteAnswer(draft.body, formatter, locale)}>
          {isAwaited && <p className={styles.quiet}>The quote is being worked out.</p>}
          <AnswerMissing what="The quote could not be worked out" failure={failure} />
          {isOut && (
            <p className={styles.quiet}>
              Version {versionText(lastQuote.number, standing.number)} says just this. Nothing has changed
              since it went out.
            </p>
          )}
        </TabHead>
        {told.length > 0 && (
          <ul className={styles.findings}>
            {told.map((words) => (
              <FindingRow key={words.sentence} severity="caution" {...words} />
            ))}
          </ul>
        )}
        {obstacles.length > 0 && <QuoteObstacles {...{ of, obstacles, context, onRoom }} onGo={go} />}
        <Fold
          summary="What the quote says"
          line={settingsLine(order, workspace.workshop, formatter)}
          holds={['quote']}
          id="quote-settings"
        >
          <QuoteSettings {...{ of, asked }} isUnderCost={obstacles.some(isUnderCost)} />
        </Fold>
        {draft !== null && <OwnersSide {...{ draft, formatter, locale, context }} />}
        {lastQuote !== null && asked !== null && (
          <QuoteStanding
            {...{ lastQuote, asked, context }}
            chosenId={agreed?.quote.id === lastQuote.id ? agreed.alternativeId : null}
          />
        )}
      </div>
      {/* What is pressed stands where it stays: what it comes to and its cautions push it down. */}
      {(!isAwaited || lastQuote !== null) && (
        <PaperDesk
          {...{ of }}
          kind="quote"
          isNext={isNext && !isOut}
          paper={
            draft === null ? null : { kind: 'quote', bodyOf: (number) => bodyOfDraft(draft, number, context) }
          }
          blockedBy={waitsWords(obstacles.length > 0, false)}
          waitsFor={draft !== null && standing.number === null ? waitsWords(false, true) : undefined}
          isBusy={isStale}
        />
      )}
    </RevealContext>
  );
}

// Helpers

const isUnderCost = (obstacle: QuoteObstacle): boolean =>
  obstacle.kind === 'alternative' ? obstacle.problem.kind === 'underCost' : obstacle.kind === 'underCost';
