import { amountWords } from '@/app/_words/amountWords';
import { type Formatter, formatterFor, type TextContext } from '@/app/_words/formatter';
import type { Lever, LeverId } from '@/lib/studies/levers/lever';
import type { LeverAim } from '@/lib/studies/levers/levers';
import type { AnswerWords } from './answerWords';

/** Levers that make another product of it. */
const changing: readonly LeverId[] = ['onePlacementLess', 'cheaperBlank'];
/** As many stand open. */
const OPEN = 3;
/** Gains within this share of the largest are spoken of as one. */
const ALIKE = 0.75;

interface SortedLevers {
  /** The three best that keep the product. */
  readonly open: readonly Lever[];
  readonly changing: readonly Lever[];
  readonly smaller: readonly Lever[];
}

/**
 * @param levers the biggest gain first
 * @param aim what is to grow; a change whose gain would be written as nothing is left out
 */
export function sortedLevers(levers: readonly Lever[], aim: LeverAim): SortedLevers {
  const told = levers.filter((lever) => isTold(lever, aim));
  const keeping = told.filter(({ id }) => !changing.includes(id));
  return {
    open: keeping.slice(0, OPEN),
    changing: told.filter(({ id }) => changing.includes(id)),
    smaller: keeping.slice(OPEN),
  };
}

/** Levers that do not stand open. */
export type LeverFold = 'levers-changing' | 'levers-smaller';

/** @returns what their fold is called: “3 smaller ones”, “1 that changes what is made”. */
export function leverFoldName(fold: LeverFold, count: number): string {
  const isOne = count === 1;
  return fold === 'levers-smaller'
    ? `${count} ${isOne ? 'smaller one' : 'smaller ones'}`
    : `${count} that ${isOne ? 'changes' : 'change'} what is made`;
}

/** What a lever brings, as a number to draw: of a job without a price what a piece costs less. */
export const gainOf = ({ gain }: Lever, aim: LeverAim): number =>
  gain[aim] > 1e-9 ? gain[aim] : gain.savingEach;

/** The same as it is written at the end of its bar. */
export function gainShort(lever: Lever, aim: LeverAim, formatter: Formatter, context: TextContext): string {
  const { gain } = lever;
  if (!(gain[aim] > 1e-9))
    return `${amountWords(gain.savingEach, context.currency, context.locale)} less a piece`;
  return aim === 'payPerHour'
    ? `+${amountWords(gain.payPerHour, context.currency, context.locale)} an hour`
    : `+${formatter.number(gain.margin * 100, 2)} points`;
}

/** All a lever brings. */
export function gainWords({ gain }: Lever, formatter: Formatter): string {
  const parts = [
    `${signed(gain.margin, formatter.number(gain.margin * 100, 2))} points of margin`,
    `${signed(gain.payPerHour, formatter.money(gain.payPerHour))} an hour`,
    ...(Math.abs(gain.savingEach) >= 0.005
      ? [
          `a piece costs ${formatter.money(Math.abs(gain.savingEach))} ${gain.savingEach > 0 ? 'less' : 'more'}`,
        ]
      : []),
    `${signed(gain.profit, formatter.money(gain.profit))} profit in all`,
  ];
  return parts.join(', ');
}

/** A job whose changes are spoken of. */
interface LeveredJob {
  /** Whole job, as it would go out. */
  readonly profit: number;
  /** “144.50”: what the sums suggest where the job asks less; null where it does not, or has several prices. */
  readonly ask: string | null;
}

/** What the best small changes bring, in one line. */
export function leverAnswer(
  open: readonly Lever[],
  aim: LeverAim,
  context: TextContext,
  { profit, ask }: LeveredJob,
): AnswerWords {
  if (profit < 0 && open.every(({ after }) => after.profit < 0))
    return { key: 'Nothing small would mend it', after: ask === null ? '' : `; ask ${ask}` };
  const gains = open.map(({ gain }) => gain[aim]);
  const most = Math.max(0, ...gains);
  const count = counts[open.length] ?? 'three';
  if (open.length === 0) return { key: 'No small change known here', after: ' leaves more of this job' };
  if (!(most > 1e-9))
    return {
      key: 'A price first',
      after: `: until one is asked, ${count} only ${open.length === 1 ? 'makes' : 'make'} it cheaper to make`,
    };
  const areAlike = open.length > 1 && Math.min(...gains) >= ALIKE * most;
  const figure =
    aim === 'payPerHour'
      ? `${amountWords(Math.round(most * 10) / 10, context.currency, context.locale)} more an hour`
      : `${formatterFor(context).number(most * 100, 1)} points more margin`;
  if (open.length === 1) return { before: 'About ', key: figure, after: ' from one small change' };
  return areAlike
    ? { before: 'About ', key: figure, after: ` from any of ${count} small changes` }
    : { before: 'Up to ', key: figure, after: ` from the best of ${count} small changes` };
}

// Helpers

/** Half a hundredth: less is written as nothing, of money and of points alike. */
const LEAST_TOLD = 0.005;

function isTold(lever: Lever, aim: LeverAim): boolean {
  const gain = gainOf(lever, aim);
  return (aim === 'margin' && lever.gain.margin > 1e-9 ? gain * 100 : gain) >= LEAST_TOLD;
}

const counts = ['no', 'one', 'two', 'three'] as const;

const signed = (value: number, text: string): string => `${value > 0 ? '+' : ''}${text}`;
