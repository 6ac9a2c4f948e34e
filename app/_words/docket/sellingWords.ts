import type { OfferProblem } from '@/lib/studies/channels/channelOffer';
import type { SoldWay } from '@/lib/studies/channels/channelsAnswer';
import { formatNumber } from '@/shared/formatNumber';
import type { AnswerWords } from './answerWords';

/** Which way of selling leaves most an hour, and which one loses. */
export function sellingAnswer(ways: readonly SoldWay[], locale: string): AnswerWords {
  const sorted = [...ways].sort((a, b) => b.payPerHour - a.payPerHour);
  const [best] = sorted;
  const worst = sorted.at(-1);
  if (best === undefined || worst === undefined || best === worst)
    return { key: 'Nothing to compare', after: ' yet' };
  const isBeyondPrice = worst.margin <= -1;
  const share = formatNumber(Math.abs(worst.margin) * 100, locale, { maxDecimals: 0 });
  const name = subjects[worst.kind];
  return {
    key: subjects[best.kind].replace(/^./, (letter) => letter.toLocaleUpperCase(locale)),
    after: ` ${verb(best.kind)} best; ${name} ${isBeyondPrice ? `${verb(worst.kind)} less than it costs` : `${worst.margin < 0 ? lose(worst.kind) : leave(worst.kind)} ${share} %`}`,
  };
}

// Helpers

const subjects: Readonly<Record<SoldWay['kind'], string>> = {
  stall: 'a stall',
  order: 'own orders',
  wholesale: 'shops',
  consignment: 'consignment',
};

const isMany = (kind: SoldWay['kind']): boolean => kind === 'order' || kind === 'wholesale';
const verb = (kind: SoldWay['kind']): string => (isMany(kind) ? 'pay' : 'pays');
const lose = (kind: SoldWay['kind']): string => (isMany(kind) ? 'lose' : 'loses');
const leave = (kind: SoldWay['kind']): string => (isMany(kind) ? 'leave' : 'leaves');

/** Said of figures of selling that stand on no word of the maker. */
export const sellingSaid: Readonly<Record<SoldWay['selling'], string>> = {
  own: '',
  customary: 'time of selling as is customary',
  notSaid: 'without time of selling: nobody has said it',
};

/** What a figure of a way of selling is called where it cannot be meant. */
export const problemFields: Readonly<Record<OfferProblem['field'], string>> = {
  kind: 'kind',
  name: 'name',
  retail: 'price',
  shareOfRetail: 'share of retail',
  taxMode: 'tax',
  tax: 'tax',
  commission: 'commission',
  commissionBase: 'commission',
  cardFee: 'card fee',
  cardFixedFee: 'fixed card fee',
  cardShare: 'share paid by card',
  cardPayments: 'card payments',
  piecesPerTicket: 'pieces on a ticket',
  sellingMinutes: 'time of selling',
  sellingCost: 'cost of a selling day',
  cashInDays: 'days until the money is there',
};
