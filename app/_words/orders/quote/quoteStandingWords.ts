import { formatterFor, type TextContext } from '@/app/_words/formatter';
import { minorMoney } from '@/app/_words/orders/minorWords';
import type { QuoteStanding } from '@/lib/quotes/stillHolds';
import type { Quote } from '@/shared/schemas/orderPapers';
import { quoteObstacleWords } from './quoteObstacleWords';

interface StandingWords {
  readonly key: string;
  readonly severity: 'caution' | 'note';
  readonly sentence: string;
  readonly detail: string;
}

const MOST_MOVED = 4;

/** @returns whether a quote still holds, and what has moved since. */
export function quoteStandingWords(
  standing: QuoteStanding,
  quote: Quote,
  context: TextContext,
): readonly StandingWords[] {
  const formatter = formatterFor(context);
  const one = (severity: 'caution' | 'note', sentence: string, detail: string) => [
    { key: standing.kind, severity, sentence, detail },
  ];
  switch (standing.kind) {
    case 'otherGoods':
      return one(
        'caution',
        'The order has other goods, sizes or quantities by now.',
        'What went out stays as it was. Issue a new version.',
      );
    case 'otherTerms':
      return one(
        'caution',
        'Prices stand otherwise to tax by now, or are in another currency.',
        'The two cannot be compared. Issue a new version.',
      );
    case 'refused':
      return one(
        'caution',
        'The order could not be quoted today, so its rates cannot be held against the quote.',
        standing.obstacles.map((obstacle) => quoteObstacleWords(obstacle, context)).join(' '),
      );
    case 'compared': {
      const { holds, isExpired, moved, marginThen, marginNow, profitNow, quoted, now } = standing;
      const money = (minor: number) => minorMoney(minor, quote.currency, context.locale);
      const rates = moved
        .slice(0, MOST_MOVED)
        .map(
          ({ label, unit, was, is }) => `${label} ${formatter.rate(was, unit)} → ${formatter.rate(is, unit)}`,
        );
      const more = moved.length > MOST_MOVED ? ` and ${moved.length - MOST_MOVED} more` : '';
      const detail = [
        rates.length === 0 ? 'No rate has moved.' : `Moved since: ${rates.join('; ')}${more}.`,
        now.total === quoted.total
          ? ''
          : `The same order comes to ${money(now.total)} today; it was quoted at ${money(quoted.total)}.`,
      ]
        .filter((sentence) => sentence !== '')
        .join(' ');
      const margins = `${formatter.share(marginNow)}, was ${formatter.share(marginThen)}; ${money(profitNow)} left`;
      return [
        {
          key: 'compared',
          severity: holds ? ('note' as const) : ('caution' as const),
          sentence: holds ? `It holds: margin ${margins}.` : `It no longer holds: margin ${margins}.`,
          detail,
        },
        ...(isExpired
          ? [
              {
                key: 'expired',
                severity: 'caution' as const,
                sentence: `It was valid until ${formatter.day(quote.validUntil)}.`,
                detail: 'Whoever says yes to it now says it late. Issue a new version, or hold to it.',
              },
            ]
          : []),
      ];
    }
    default:
      return standing satisfies never;
  }
}
