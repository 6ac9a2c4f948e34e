import { type Wording, wording } from '@/app/_words/findings/wording';
import type { Formatter } from '@/app/_words/formatter';
import { gateWords } from '@/app/_words/orders/notes/orderStepWords';
import type { OrderStanding } from '@/lib/orders/orderStanding';

/** @returns what is worth knowing of how an order stands: what was passed, quoted anew, accepted late, beyond what was included. */
export function standingNotes(standing: OrderStanding, formatter: Formatter): readonly Wording[] {
  const { overrides, isAcceptedLate, isQuotedAnew, isQuoteMissing, revisions, reprints } = standing;
  const again = reprints.reduce((sum, { pieces }) => sum + pieces, 0);
  return [
    ...overrides.map(({ gate, reason, day }) =>
      wording(`Gone on without ${gateWords[gate]} on ${formatter.day(day)}.`, `Because: ${reason}`),
    ),
    ...(isQuoteMissing
      ? [
          wording(
            'It was accepted, but the quote is not on this device.',
            'What was agreed is not known here. Bring in a copy that has the quote.',
          ),
        ]
      : []),
    ...(isQuotedAnew
      ? [
          wording(
            'A newer version of the quote went out after the accepted one.',
            'What was accepted counts until the new one is accepted.',
          ),
        ]
      : []),
    ...(isAcceptedLate
      ? [
          wording(
            'It was accepted after the quote had ended.',
            'Look whether its prices and days still hold.',
          ),
        ]
      : []),
    ...(revisions.beyond > 0
      ? [
          wording(
            `${formatter.count(revisions.used, 'round')} of proofs, ${formatter.number(revisions.included)} included.`,
            'Note a change of the order with what the rest costs.',
          ),
        ]
      : []),
    ...(again > 0
      ? [
          wording(
            `${formatter.count(again, 'piece')} made again.`,
            'Why, and who pays, stands in what happened.',
          ),
        ]
      : []),
  ];
}
