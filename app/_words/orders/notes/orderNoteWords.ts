import type { EditOutcome } from '@/app/_store/documentsState';
import type { Formatter } from '@/app/_words/formatter';
import type { OrderGate } from '@/shared/schemas/orderEvents';
import { gatesInWords } from './orderStepWords';

/** @returns why something could not be noted, and what to do. */
export function notNotedWords(state: Exclude<EditOutcome['state'], 'shown'>): string {
  switch (state) {
    case 'unchanged':
      return 'Nothing would change by it, so nothing was noted.';
    case 'notOpen':
      return 'Your documents are not open just now, so it was not noted. What you typed stays: try again in a moment.';
    case 'refused':
      return 'It was not noted, for it does not fit into the record. What you typed stays: look through the fields, and make long texts shorter.';
    default:
      return state satisfies never;
  }
}

/** Said before a step is noted whose gates are shut. */
export const doesNotCountWords = (gates: readonly OrderGate[]): string =>
  `It can be noted, but does not count until ${gatesInWords(gates)} ${gates.length === 1 ? 'is' : 'are'} here.`;

/** Said before an order is closed. */
export const closesWords =
  'Nothing is left to do then. What the order took is entered under Money, as money spent; that can still be done later.';

/** Said before an order is closed of which money is to go back. */
export const closesHeldWords = (amount: string, who: string): string =>
  `${amount} more came than is owed. Give it back to ${who} and note that under Money, as given back; until then it stands under Today.`;

/** @returns what a further round of proofs comes to. */
export function revisionWords(used: number, included: number, formatter: Formatter): string {
  const rounds = `${formatter.count(included, 'round')} of proofs ${included === 1 ? 'is' : 'are'} included`;
  const left = included - used;
  if (left > 1)
    return `${rounds}; after this one ${formatter.number(left - 1)} ${left === 2 ? 'is' : 'are'} left.`;
  if (left === 1) return `${rounds}; this is the last of them.`;
  return `${rounds}, and ${formatter.count(used, 'round')} ${used === 1 ? 'was' : 'were'} used: this one is not included. Note a change of the order with what it costs.`;
}

/**
 * @param pieces that are to be made again
 * @param ordered all pieces of the order's jobs; 0 where none are known
 * @returns what is odd about that; null where nothing is
 */
export function madeAgainQuestion(
  pieces: number,
  ordered: number,
  isPressed: boolean,
  formatter: Formatter,
): string | null {
  if (ordered > 0 && pieces > ordered)
    return `The order has ${formatter.count(ordered, 'piece')} in all. Are ${formatter.number(pieces)} made again? More pieces for the customer are a change of the order.`;
  return isPressed
    ? null
    : 'Nothing of this order is noted as pressed yet. Is something made again? What is made for the first time is in the jobs.';
}

export const acceptedLateWords = (validUntil: string, formatter: Formatter): string =>
  `This quote was valid until ${formatter.day(validUntil)}. It can be accepted all the same, if you stand by its prices and days.`;

export const changedSinceProofWords = (names: readonly string[]): string =>
  `Changed since this proof: ${new Intl.ListFormat('en').format(names)}. A yes to the older version does not open the press; send a new proof.`;
