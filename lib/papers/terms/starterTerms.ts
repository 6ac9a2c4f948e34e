import type { LabelKey } from '@/lib/papers/words/englishLabels';
import type { TermKey } from '@/shared/schemas/seller';

/**
 * What a figure of the terms stands for; one that is not known leaves out the sentences that name it. All are texts as
 * the paper writes figures.
 */
export const termFigures = [
  'deposit',
  'balance',
  'total',
  'creditDays',
  'delivery',
  'ready',
  'approveBy',
  'leadDays',
  'revisions',
  'remakeDays',
  'claimDays',
  'spares',
] as const;

export type TermFigure = (typeof termFigures)[number];

interface StarterTerm {
  /** The label of papers that it stands under. */
  readonly heading: LabelKey;
  /** Sentences; what stands in braces is put in. */
  readonly text: string;
  /** Whether law decides part of it, so that the maker is sent to the local authority: on the screen, not on paper. */
  readonly askLocally: boolean;
}

/** Where workshops begin: our own wording, plain words, to be written anew by whoever uses it. */
export const starterTerms: Readonly<Record<TermKey, StarterTerm>> = {
  payment: {
    heading: 'termPayment',
    text: 'To pay now: {deposit}. Before the goods go out: {balance}. To pay within {creditDays} days of the invoice.',
    askLocally: false,
  },
  delivery: {
    heading: 'termDelivery',
    text: '{delivery}. Ready on {ready}, if we have your approval and any deposit by {approveBy}; later ones move the day.',
    askLocally: false,
  },
  proof: {
    heading: 'termProof',
    text: 'We print what you approve. Please check spelling, size, place and the list of sizes. We book the work once we have your approval and any deposit.',
    askLocally: false,
  },
  revisions: {
    heading: 'termRevisions',
    text: 'Rounds of changes included: {revisions}. We tell you the price of further ones before we make them.',
    askLocally: false,
  },
  colour: {
    heading: 'termColour',
    text: 'We match by eye to a pressed sample. A screen glows and cloth does not, so small differences are no fault.',
    askLocally: false,
  },
  quantity: {
    heading: 'termQuantity',
    text: 'You get exactly the number ordered. A piece spoiled beyond our spares is made again within {remakeDays} days, or you get its price back.',
    askLocally: false,
  },
  claims: {
    heading: 'termClaims',
    text: 'Please tell us within {claimDays} days, and keep the goods until we have seen them.',
    askLocally: true,
  },
  ownGarments: {
    heading: 'termOwnGarments',
    text: 'Any press can spoil a piece: what you bring is pressed at your risk. Please bring {spares} more than you need.',
    askLocally: true,
  },
  cancelling: {
    heading: 'termCancelling',
    text: 'Before we order the blanks you get the deposit back, less the time for the artwork. After that you pay what has been spent and worked.',
    askLocally: true,
  },
  rights: {
    heading: 'termRights',
    text: 'You confirm that you may have the pictures, names and marks printed.',
    askLocally: true,
  },
  late: {
    heading: 'termLate',
    text: 'If you cannot fetch or pay in time, tell us and we find a way.',
    askLocally: true,
  },
};
