import type { OrderOnPaper } from '@/app/_orderPapers/orderOnPaper';
import type { OrderPlace } from '@/app/_words/orders/orderPlaces';
import type { QuoteObstacle } from '@/lib/quotes/quoteObstacle';

/** Where an obstacle is mended. */
type Place =
  | { readonly kind: 'page'; readonly href: string; readonly words: string }
  /** A field of the quote's own settings. */
  | { readonly kind: 'field'; readonly id: string; readonly words: string }
  /** A field or part of the order beside its papers. */
  | { readonly kind: 'room'; readonly id: OrderPlace; readonly words: string }
  /** On this very page. */
  | { readonly kind: 'here' };

export function obstaclePlace(obstacle: QuoteObstacle, { order }: Pick<OrderOnPaper, 'order'>): Place {
  const field = (id: string, words: string): Place => ({ kind: 'field', id, words });
  const room = (id: OrderPlace, words: string): Place => ({ kind: 'room', id, words });
  const job = (jobId: string): Place => ({ kind: 'page', href: `/jobs/${jobId}`, words: 'Go to the job' });
  switch (obstacle.kind) {
    case 'asBegun':
    case 'stopped':
    case 'noPrice':
      return job(obstacle.jobId);
    case 'listGone':
    case 'listExpired':
    case 'listWithdrawn':
    case 'listOtherTerms':
    case 'sizeNotListed':
    case 'underFirstBreak':
      return field(`quote-price-${obstacle.lineId}`, 'Choose its price');
    case 'noChannel':
    case 'mixedChannels':
      return field('quote-channel', 'Choose the way of selling');
    case 'noTaxMode':
      return { kind: 'page', href: '/workshop', words: 'Go to the workshop' };
    case 'noCertificate':
    case 'certificateExpired':
      return order.customerId === null
        ? field('quote-exempt', 'Let tax be taken')
        : { kind: 'page', href: `/customers/${order.customerId}`, words: 'Go to the customer' };
    case 'discountOver':
    case 'asksNothing':
      return field('quote-discount', 'Go to the discount');
    case 'underCost':
      return field('quote-under-cost', 'Write down why');
    case 'alternative':
      return field(`quote-alternative-${obstacle.alternativeId}`, 'Go to the alternative');
    case 'noCustomer':
      return room('order-customer', 'Choose the customer');
    case 'nothingOrdered':
      return room('order-jobs', order.jobIds.length === 0 ? 'Add a job' : 'Go to the jobs');
    case 'jobGone':
    case 'tooManyLines':
      return room('order-jobs', 'Go to the jobs');
    case 'wantedInPast':
      return room('order-wanted', 'Set the day');
    case 'tooLarge':
      return { kind: 'here' };
    default:
      return obstacle satisfies never;
  }
}
