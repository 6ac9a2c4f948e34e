import { notFrozen } from '@/app/_words/afterRun/afterRunWords';
import { formatterFor } from '@/app/_words/formatter';
import { cameAllTheSame } from '@/app/_words/making/runCommandWords';
import { runTroubleWords } from '@/app/_words/making/runTroubleWords';
import { usableLocale } from '@/app/_words/usableLocale';
import type { BuyingPlan } from '@/lib/buying/buyingPlan';
import { planBuying } from '@/lib/buying/planBuying';
import type { LearnedRun } from '@/lib/learning/learnedFrom';
import { learnedScrap } from '@/lib/learning/learnedScrap';
import { foundWorks } from '@/lib/making/foundWorks';
import { planRun } from '@/lib/making/planRun';
import { runFacts } from '@/lib/making/runFacts';
import type { RunPlan, RunTrouble } from '@/lib/making/runPlan';
import { canonicalText } from '@/lib/stored/canonicalText';
import { paidForRun } from '@/lib/variances/pricesPaid';
import { runResult } from '@/lib/variances/runResult';
import { sharedHours } from '@/lib/variances/sharedHours';
import { addDays } from '@/shared/days';
import type { GapLine } from '@/shared/schemas/making/runEvents';
import { type BuyingList, buyingListSchema, type Cover } from '@/shared/schemas/making/supply';
import { besideRun } from './besideRun';
import { edgeGrid } from './edgeGrid';
import type { RunOfFile } from './runOfCopy';

/** Part of a day by the wall clock, HH:MM; `day` is the one on which it begins. */
interface FromTo {
  readonly day: string;
  readonly from: string;
  readonly to: string;
}

interface TableOfRun {
  /** Blanks at a cover of 75 %: good pieces, blanks to buy, how likely the size then comes out whole. */
  readonly buy: readonly {
    readonly size: string;
    readonly need: number;
    readonly buy: number;
    readonly chance: number;
  }[];
  readonly covers: readonly { readonly cover: Cover; readonly bought: number; readonly everySize: number }[];
  readonly clock: readonly (FromTo & { readonly what: string })[];
  /** Heatings-up of the press. */
  readonly sessions: readonly FromTo[];
  /** At the pace of the bottleneck; null where nothing keeps anything busy. */
  readonly piecesPerHour: number | null;
  readonly bottleneck: 'printer' | 'press' | 'hands' | null;
  /** Whole minor units, above 0 in the maker's favour; none of a run that has no standard yet. */
  readonly variances: readonly { readonly line: VarianceLine; readonly amount: number }[];
  /** Profit of the standard and as it came, whole minor units; null where no price was asked or nothing began. */
  readonly bridge: { readonly from: number; readonly to: number } | null;
  /** Share of presses that spoil the piece, as learned, and its upper bound of 90 %, by the id of the print. */
  readonly learned: readonly { readonly placement: string; readonly scrap: number; readonly upper: number }[];
}

type VarianceLine = (typeof varianceLines)[number];

type RunTable =
  | {
      readonly kind: 'planned';
      readonly answer: TableOfRun;
      /** Said beside the answer, in words. */
      readonly beside: readonly string[];
    }
  | {
      readonly kind: 'refused';
      /** What a run that has begun came to stands beside the troubles. */
      readonly answer: {
        readonly troubles: readonly (RunTrouble & { readonly message: string })[];
      } & Partial<Came>;
      readonly beside: readonly string[];
    };

type Came = Pick<TableOfRun, 'variances' | 'bridge' | 'learned'>;

/** What the command gives for a run, or all that stands in the way of planning it and what it came to, in words. */
export function answerRun(asked: RunOfFile): RunTable {
  const { run, day, workshop, inputs } = asked;
  const found = foundWorks(run, (jobId) => inputs.get(jobId) ?? null, edgeGrid());
  const planned = planRun({ run, found, bench: workshop, today: day });
  const { came, beside } = cameOf(asked);
  if (planned.kind === 'troubled') {
    const [formatter, locale] = [formatterFor(workshop), usableLocale(workshop.locale)];
    const troubles = planned.troubles.map((trouble) => ({
      ...trouble,
      message: runTroubleWords(trouble, formatter, locale),
    }));
    return {
      ...{ kind: 'refused', answer: { troubles, ...came } },
      beside: [
        ...troubles.map(({ message }) => message),
        ...(came === null ? [] : [cameAllTheSame]),
        ...beside,
      ],
    };
  }
  const { plan } = planned;
  const bought = boughtFor(asked, plan);
  return {
    kind: 'planned',
    beside,
    answer: {
      buy: blanksOf(bought),
      covers: bought.covers.map(({ cover, bought: blanks, everySize }) => ({
        ...{ cover, bought: blanks, everySize },
      })),
      clock: plan.clock.map(({ what, name, ...at }) => ({
        what: name === '' ? what : `${what} ${name}`,
        ...fromTo(at),
      })),
      sessions: plan.sessions.map(fromTo),
      piecesPerHour: plan.pace?.piecesPerHour ?? null,
      bottleneck: plan.pace?.bottleneck ?? null,
      ...(came ?? NOTHING_CAME),
    },
  };
}

// Helpers

const varianceLines = [
  'blanksPrice',
  'blanksUsage',
  'paperPrice',
  'paperUsage',
  'inkUsage',
  'labour',
  'overhead',
  'reprints',
] as const satisfies readonly GapLine[];

/** What is to be bought is told at one cover, whatever the run's own is. */
const usualList = (run: RunOfFile['run']): BuyingList =>
  buyingListSchema.parse({
    name: run.name,
    works: run.works.map(({ jobId, orderId }) => ({ jobId, orderId })),
    cover: 'usual',
  });

function boughtFor({ run, day, workshop, inputs, suppliers, consumables, piles }: RunOfFile, plan: RunPlan) {
  const works = run.works.flatMap(({ jobId, orderId }) => {
    const input = inputs.get(jobId);
    return input === undefined
      ? []
      : [{ jobId, orderId, name: input.job.name, input, pressOn: plan.sessions[0]?.day ?? null }];
  });
  return planBuying(
    {
      ...{ asOf: day, currency: workshop.currency, list: usualList(run), works },
      ...{ suppliers, consumables, piles, reserved: [] },
    },
    edgeGrid(),
  );
}

const blanksOf = ({ rows }: BuyingPlan): TableOfRun['buy'] =>
  rows.flatMap(({ item, good, purchase, chanceWithAll }) =>
    item.kind === 'blank'
      ? [{ size: item.size, need: good ?? 0, buy: purchase?.quantity ?? 0, chance: chanceWithAll ?? 0 }]
      : [],
  );

const NOTHING_CAME: Came = { variances: [], bridge: null, learned: [] };

/** How it came out against the standard it began by; null of a run that has none. */
function cameOf(asked: RunOfFile): { readonly came: Came | null; readonly beside: readonly string[] } {
  const { runId, run, day, notes, standards, hours, goodsIn } = asked;
  const facts = runFacts(runId, run, notes, standards);
  const { standard } = facts;
  if (standard === null) return { came: null, beside: facts.isBegun ? [notFrozen] : [] };
  const { currency } = standard.body;
  const paid = paidForRun(goodsIn, currency, facts);
  const shared = sharedHours(hours, standards);
  const result = runResult(standard, { facts, paid, orderHours: shared.get(runId) ?? [] });
  const { bars, bridge } = result;
  const named = new Set<GapLine>(varianceLines);
  const otherBars = bars.filter(({ line, minor }) => !named.has(line) && minor !== 0);
  return {
    came: {
      variances: varianceLines.map((line) => ({
        line,
        amount: bars.find((bar) => bar.line === line)?.minor ?? 0,
      })),
      bridge,
      learned: learnedOf({ runId, standard: standard.body, facts, result }, day),
    },
    beside: besideRun(asked, { facts, standard, result, otherBars }),
  };
}

/** Of each print that was pressed; prints of one blank at one press in one place teach together. */
function learnedOf(run: LearnedRun, day: string): TableOfRun['learned'] {
  const documents = { jobs: [] };
  const lessons = learnedScrap({ runs: [run], documents, day });
  return run.standard.works.flatMap(({ lines }) =>
    lines.flatMap(({ blankId, placements }) =>
      placements.flatMap(({ placementId, pressId, position }) => {
        const subject = canonicalText({ of: 'scrap', blankId, pressId, position });
        const lesson = lessons.find((one) => canonicalText(one.subject) === subject);
        return lesson?.upper == null
          ? []
          : [{ placement: placementId, scrap: lesson.measured, upper: lesson.upper }];
      }),
    ),
  );
}

const DAY_MINUTES = 1440;

function fromTo({
  day,
  fromMinute,
  minutes,
}: {
  readonly day: string;
  readonly fromMinute: number;
  readonly minutes: number;
}): FromTo {
  const from = Math.round(fromMinute);
  return {
    day: addDays(day, Math.floor(from / DAY_MINUTES)),
    from: wall(from),
    to: wall(Math.round(fromMinute + minutes)),
  };
}

/** @param minutes whole, after midnight of some day */
function wall(minutes: number): string {
  const two = (value: number) => String(value).padStart(2, '0');
  return `${two(Math.floor(minutes / 60) % 24)}:${two(minutes % 60)}`;
}
