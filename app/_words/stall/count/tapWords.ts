import type { Tap } from '@/shared/schemas/stallEvents';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { payWords, pieceName, shortAmount } from './countWords';

/** @returns what was tapped, in few words: “Otter L, 28” */
export function tapWords(tap: Tap, plan: StallPlan, locale: string): string {
  const money = (minor: number) => shortAmount(minor, plan.currency, locale);
  const name = (goods: Parameters<typeof pieceName>[1]) => pieceName(plan, goods);
  switch (tap.what) {
    case 'sale':
      return `${name(tap.goods)}${tap.isSecond === true ? ', a second' : ''}, ${money(tap.minor)}`;
    case 'set':
      return `${plan.sets.find(({ id }) => id === tap.setId)?.name ?? 'Set'}, ${money(-tap.minor)}`;
    case 'pay':
      return payWords[tap.pay];
    case 'next':
      return 'Next customer';
    case 'exchange':
      return `${name(tap.back)} for ${name(tap.out)}`;
    case 'refund':
      return `${name(tap.goods)} came back`;
    case 'given':
      return `${name(tap.goods)} given`;
    case 'damaged':
      return `${name(tap.goods)} damaged`;
    case 'refill':
      return `${name(tap.goods)}, ${tap.pieces} more`;
    case 'asked':
      return tap.goods === null ? `Asked: ${tap.words || 'something'}` : `Asked: ${name(tap.goods)}`;
    case 'putBack':
      return tap.goods === null ? 'Put back' : `${name(tap.goods)} put back`;
    case 'visitors':
      return `${tap.count} visitors`;
    case 'weather':
      return `Weather: ${plan.weathers.find(({ id }) => id === tap.weatherId)?.name ?? 'another'}`;
    case 'note':
      return 'Note';
    case 'lead':
      return 'Lead';
    case 'tin':
      return `${tinWords[tap.cause]} ${money(tap.minor)}${tap.words === '' ? '' : `: ${tap.words}`}`;
    default:
      return tap satisfies never;
  }
}

/** What was spent is told by it in the evening. */
export const spentOnHint = 'As “tape”; may stay empty.';

export const tinWords = { skimmed: 'Taken out', added: 'Put in', spent: 'Spent' } as const;
