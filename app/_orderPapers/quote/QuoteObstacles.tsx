import Link from 'next/link';
import { Button } from '@/app/_controls/Button';
import { FindingRow } from '@/app/_controls/FindingRow';
import styles from '@/app/_orderPapers/OrderPapers.module.css';
import type { OrderOnPaper } from '@/app/_orderPapers/orderOnPaper';
import type { TextContext } from '@/app/_words/formatter';
import type { OrderPlace } from '@/app/_words/orders/orderPlaces';
import { quoteObstacleWords, RIGHT_AS_BEGUN } from '@/app/_words/orders/quote/quoteObstacleWords';
import type { QuoteObstacle } from '@/lib/quotes/quoteObstacle';
import { obstaclePlace } from './obstaclePlace';
import { orderFields } from './orderFields';
import { withLine } from './withLine';

type QuoteObstaclesProps = Readonly<{
  of: OrderOnPaper;
  obstacles: readonly QuoteObstacle[];
  context: TextContext;
  /** Shows a field of the quote's own settings. */
  onGo: (fieldId: string) => void;
  /** Leads to a place of the order beside its papers. */
  onRoom: (place: OrderPlace) => void;
}>;

/** All that stands in the way of the quote, each with the way to where it is mended. */
export function QuoteObstacles({ of, obstacles, context, onGo, onRoom }: QuoteObstaclesProps) {
  const { change } = orderFields(of);
  return (
    <>
      <h3 className={styles.sub}>
        {of.formatter.count(obstacles.length, 'thing')} {obstacles.length === 1 ? 'stands' : 'stand'} in the
        way
      </h3>
      <ul className={styles.findings}>
        {obstacles.map((obstacle) => {
          const place = obstaclePlace(obstacle, of);
          const sentence = quoteObstacleWords(obstacle, context);
          return (
            <FindingRow key={sentence} severity="stop" sentence={sentence}>
              {place.kind === 'page' && <Link href={place.href}>{place.words}</Link>}
              {obstacle.kind === 'asBegun' && (
                <Button
                  kind="quiet"
                  onPress={() =>
                    change(`${obstacle.job} as it began`, (now) => ({
                      ...now,
                      lines: withLine(now.lines, obstacle, { rightAsBegun: true }),
                    }))
                  }
                >
                  {RIGHT_AS_BEGUN}
                </Button>
              )}
              {place.kind === 'room' && (
                <Button kind="quiet" onPress={() => onRoom(place.id)}>
                  {place.words}
                </Button>
              )}
              {place.kind === 'field' && (
                <Button kind="quiet" onPress={() => onGo(place.id)}>
                  {place.words}
                </Button>
              )}
            </FindingRow>
          );
        })}
      </ul>
    </>
  );
}
