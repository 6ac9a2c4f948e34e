import { judgeNumber } from '@/app/_numbers/judgeNumber';
import { numberProblemWords } from '@/app/_words/fields/numberProblemWords';
import type { Formatter } from '@/app/_words/formatter';
import { pastDayWords, tooLongWords } from '@/app/_words/orders/board/enquiryWords';
import { numberLimits, textLimits } from '@/shared/limits';
import { nameSchema } from '@/shared/schemas/basics';
import { orderSchema } from '@/shared/schemas/order';
import { z } from '@/shared/schemas/z';

/** An enquiry as it is typed: whatever stands in its fields, right or wrong. */
export const enquiryDraftSchema = z.strictObject({
  who: z.string(),
  what: z.string(),
  pieces: z.string(),
  wantedOn: z.string().nullable(),
  heardFrom: z.string(),
});

export type EnquiryDraft = Readonly<z.infer<typeof enquiryDraftSchema>>;

export const freshEnquiry: EnquiryDraft = { who: '', what: '', pieces: '', wantedOn: null, heardFrom: '' };

export const isUntouched = (draft: EnquiryDraft): boolean =>
  Object.values(draft).every((text) => text === null || text.trim() === '');

/** What is wrong with each field, as a sentence; undefined where nothing is. */
type EnquiryIssues = Readonly<Record<keyof EnquiryDraft, string | undefined>>;

interface JudgedEnquiry {
  readonly issues: EnquiryIssues;
  /** Why nothing can be noted yet. */
  readonly missing: string | undefined;
  readonly askedPieces: number | null;
}

export function judgedEnquiry(
  draft: EnquiryDraft,
  today: string,
  locale: string,
  formatter: Formatter,
): JudgedEnquiry {
  const { who, what, pieces, wantedOn, heardFrom } = draft;
  const judged = judgeNumber(pieces, locale, piecesLimits);
  return {
    issues: {
      who: tooLong(who, longestName),
      what: tooLong(what, longestAsked),
      pieces: judged.kind === 'problem' ? numberProblemWords(judged.problem, pieces, locale) : undefined,
      wantedOn: wantedOn !== null && wantedOn < today ? pastDayWords(formatter.day(wantedOn)) : undefined,
      heardFrom: tooLong(heardFrom, longestHeard),
    },
    missing: who.trim() === '' && what.trim() === '' ? 'Type who asks, or what they want.' : undefined,
    askedPieces: judged.kind === 'good' ? judged.value : null,
  };
}

/** Longer names make way for the number that keeps two orders apart. */
const LONGEST_ORDER_NAME = 110;

/** @returns what an order is called until somebody gives it a better name. */
export function enquiryName({ who, what }: Pick<EnquiryDraft, 'who' | 'what'>): string {
  const [thing = ''] = what.trim().split('\n');
  const name = [who.trim(), thing.trim()].filter((part) => part !== '').join(', ');
  if (name.length <= LONGEST_ORDER_NAME) return name;
  // By letters, so that none is cut in two.
  let short = '';
  for (const letter of name) {
    if (short.length + letter.length >= LONGEST_ORDER_NAME) break;
    short += letter;
  }
  return `${short.trimEnd()}…`;
}

// Helpers

const piecesLimits = numberLimits(orderSchema, ['askedPieces']);
const longestName = textLimits(z.strictObject({ name: nameSchema }), ['name']).longest;
const longestAsked = textLimits(orderSchema, ['asked']).longest;
const longestHeard = textLimits(orderSchema, ['heardFrom']).longest;

function tooLong(text: string, longest: number): string | undefined {
  const over = text.trim().length - longest;
  return over > 0 ? tooLongWords(over, longest) : undefined;
}
