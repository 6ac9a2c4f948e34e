import type { AnswerWords } from '@/app/_words/docket/answerWords';
import type { Formatter } from '@/app/_words/formatter';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { shortDay } from '@/app/_words/orders/orderDayWords';
import { withCapital } from '@/app/_words/spelledNumber';
import { paperFacts } from '@/lib/kinds/paperFacts';
import { isPlainObject } from '@/lib/merging/sameValue';
import type { Happening } from '@/lib/orders/orderFacts';
import type { orderTimeline } from '@/lib/orders/orderTimeline';
import { seriesNumberText, versionText } from '@/shared/orderNumberText';
import type { Entry, Paper } from '@/shared/schemas/happened';
import type { Attachment } from '@/shared/schemas/keptFile';
import {
  expenseSchema,
  type OrderNumber,
  type OrderStep,
  orderEventSchema,
  orderNumberSchema,
  paymentSchema,
  payoutSchema,
} from '@/shared/schemas/orderEvents';
import {
  answerWayWords,
  causeWords,
  gateWords,
  lossWords,
  payerWords,
  paymentKindWords,
  paymentWayWords,
  reminderWords,
  stepWords,
} from './orderStepWords';

type Row = ReturnType<typeof orderTimeline>[number];

/** One thing that happened, in words. */
interface TimelineWords {
  readonly what: string;
  /** Empty where there is nothing more to say. */
  readonly detail: string;
  /** Gone on before a gate was open. */
  readonly isOverride: boolean;
  /** A file that shows it. */
  readonly file: Attachment | null;
  /** Whether it is taken back here; papers are withdrawn where they are. */
  readonly canGoBack: boolean;
}

/** @returns the last thing that happened, in one line. */
export function timelineAnswer(
  happened: readonly Happening[],
  today: string,
  locale: string,
  formatter: Formatter,
): AnswerWords {
  const last = happened.at(-1);
  if (last === undefined) return { key: 'Nothing noted yet' };
  const { what } = 'series' in last ? paperWords(last) : entryWords(last, locale);
  const day = 'day' in last.body ? last.body.day : 'issuedOn' in last.body ? last.body.issuedOn : null;
  return {
    key: day === null ? what : `${what}, ${shortDay(day, today, locale)}`,
    after: `; ${formatter.count(happened.length, 'thing')} noted in all`,
  };
}

export const timelineWords = ({ of }: Row, locale: string): TimelineWords =>
  of.table === 'paper' ? paperWords(of.paper) : entryWords(of.entry, locale);

// Helpers

const plain = (what: string, detail = ''): TimelineWords => ({
  ...{ what, detail, isOverride: false, file: null, canGoBack: true },
});

function paperWords({ kind, number, body }: Paper): TimelineWords {
  const known = Object.entries(paperFacts).find(([name]) => name === kind)?.[1].word ?? 'paper';
  const issuedOn =
    typeof body === 'object' && body !== null && 'issuedOn' in body ? String(body.issuedOn) : '';
  const name =
    kind === 'quote'
      ? `version ${versionText(number, orderIn(body))}`
      : kind === 'confirmation' || issuedOn === ''
        ? ''
        : seriesNumberText(number, issuedOn);
  return { ...plain(withCapital(known), `${name} went out`.trim()), canGoBack: false };
}

function orderIn(body: unknown): OrderNumber | null {
  const said = isPlainObject(body) ? orderNumberSchema.safeParse(body.order) : null;
  return said?.success === true ? said.data : null;
}

/** Nothing of a body is taken for granted: what a later build wrote is told by its kind. */
function entryWords({ kind, body }: Pick<Entry, 'kind' | 'body'>, locale: string): TimelineWords {
  switch (kind) {
    case 'orderEvent': {
      const event = orderEventSchema.safeParse(body);
      return event.success ? stepLine(event.data.step, locale) : plain('Something a later version noted');
    }
    case 'payment': {
      const payment = paymentSchema.safeParse(body);
      if (!payment.success) return plain('A payment that cannot be read');
      const { kind: way, amountMinor, currency, way: how, note } = payment.data;
      return plain(
        way === 'payment' ? 'Money came' : paymentKindWords[way],
        told(`${minorMoney(amountMinor, currency, locale)}, ${paymentWayWords[how].toLowerCase()}`, note),
      );
    }
    case 'payout': {
      const payout = payoutSchema.safeParse(body);
      return payout.success
        ? plain('A payment reached the bank', payout.data.reference)
        : plain('A payout that cannot be read');
    }
    case 'expense': {
      const expense = expenseSchema.safeParse(body);
      if (!expense.success) return plain('An expense that cannot be read');
      const { what, amountMinor, currency, receipt } = expense.data;
      return {
        ...plain('Money spent', `${minorMoney(amountMinor, currency, locale)}, ${what}`),
        file: receipt,
      };
    }
    case 'approval':
      return { ...plain('Picture approved', 'with its job'), canGoBack: false };
    case 'stockMove':
      return { ...plain('Stock moved', 'for the order'), canGoBack: false };
    default:
      return { ...plain('Something else was noted'), canGoBack: false };
  }
}

function stepLine(step: OrderStep, locale: string): TimelineWords {
  const what = stepWords[step.what];
  switch (step.what) {
    case 'enquired':
      return { ...plain(what), canGoBack: false };
    case 'quoted':
      return { ...plain(what), canGoBack: false };
    case 'accepted':
    case 'approved':
      return { ...plain(what, `by ${step.by}, ${answerWayWords[step.how].toLowerCase()}`), file: step.proof };
    case 'revised':
      return plain(what, step.wish);
    case 'change':
      return plain(what, `${minorMoney(step.amountMinor, step.currency, locale)}: ${step.wish}`);
    case 'reprint':
      return plain(
        what,
        told(
          `${step.pieces}: ${causeWords[step.cause].toLowerCase()}, paid by ${payerWords[step.payer].toLowerCase()}`,
          step.note,
        ),
      );
    case 'lost':
      return plain(what, told(lossWords[step.why].toLowerCase(), step.note));
    case 'override':
      return { ...plain(`Gone on without ${gateWords[step.gate]}`, step.reason), isOverride: true };
    case 'reminded':
      return plain(what, reminderWords[step.of].toLowerCase());
    default:
      return plain(what, step.note);
  }
}

const told = (first: string, note: string): string => (note === '' ? first : `${first}. ${note}`);
