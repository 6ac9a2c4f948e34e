import type { Block, Drawing, DrawnPress, Note, Paper, TickGrid } from '@/lib/papers/paper';
import type { Labels } from '@/lib/papers/words/englishLabels';
import { figuresOf } from '@/lib/papers/words/figures';
import { filled } from '@/lib/papers/words/labelsFor';

/** What the bench needs of a job, in words that are made already, in the order of the work. No cost stands on it. */
export interface JobSheetBody {
  readonly page: 'a4' | 'letter';
  readonly language: string;
  readonly locale: string;
  readonly workshop: string;
  readonly job: string;
  readonly pieces: number;
  /** Beside the name: when it is wanted, for whom. */
  readonly facts: readonly { readonly name: string; readonly value: string }[];
  readonly before: readonly JobStep[];
  /** In the order of the press. */
  readonly presses: readonly JobPress[];
  readonly after: readonly JobStep[];
  /** What to mind at the press. */
  readonly watch: readonly Note[];
}

export interface JobStep {
  readonly heading: string;
  readonly aside: string;
  readonly lines: readonly string[];
  readonly ticks: readonly string[];
  /** Words with a line beside each, to count on. */
  readonly tally: { readonly words: string; readonly labels: readonly string[] };
  /** Blanks of several lines by size. */
  readonly grid: TickGrid | null;
}

export interface JobPress {
  readonly heading: string;
  readonly aside: string;
  /** What the press is set to; empty where it is said once for all. */
  readonly strong: string;
  /** How else it is pressed, and where it sits. */
  readonly lines: readonly string[];
  readonly drawings: readonly Drawing[];
  readonly sizes: readonly { readonly size: string; readonly good: number; readonly spares: number }[];
  /** How many good ones a square stands for. */
  readonly perTick: number;
}

export function jobSheetPaper(body: JobSheetBody, labels: Labels): Paper {
  const figures = figuresOf({ ...body, length: 'mm', currency: 'USD' });
  const told = { labels, count: figures.count };
  return {
    page: body.page,
    language: body.language,
    title: `${labels.jobSheet}: ${body.job}`,
    foot: labels.page,
    blocks: [
      { kind: 'head', name: body.workshop, tagline: '', lines: [labels.jobSheet], logo: null },
      {
        kind: 'title',
        title: body.job,
        subject: '',
        party: null,
        facts: [{ name: labels.piecesInAll, value: figures.count(body.pieces) }, ...body.facts],
      },
      ...body.before.map((step, at) => stepBlock(step, at + 1)),
      {
        kind: 'presses',
        presses: body.presses.map((press, at) => drawnPress(press, body.before.length + at + 1, told)),
      },
      ...body.after.map((step, at) => stepBlock(step, body.before.length + body.presses.length + at + 1)),
      { kind: 'notes', notes: body.watch },
      { kind: 'sign', labels: [labels.goodAndScrapped, labels.minutesTaken, labels.packedBy] },
    ],
  };
}

// Helpers

interface StepTold {
  readonly labels: Labels;
  readonly count: (count: number) => string;
}

const headed = (heading: string, numeral: number): string => `${numeral}. ${heading}`;

const stepBlock = ({ heading, ...step }: JobStep, numeral: number): Block => ({
  kind: 'step',
  heading: headed(heading, numeral),
  ...step,
});

function drawnPress(press: JobPress, numeral: number, { labels, count }: StepTold): DrawnPress {
  const { heading, aside, strong, lines, drawings, sizes, perTick } = press;
  return {
    heading: headed(heading, numeral),
    ...{ aside, strong, lines, drawings },
    heads: {
      size: labels.size,
      good: labels.good,
      ticks: perTick === 1 ? labels.tickGood : filled(labels.tickSeveral, { count: count(perTick) }),
      spares: labels.spares,
    },
    sizes: sizes.map(({ size, good, spares }) => ({
      size,
      good: count(good),
      ticks: Math.ceil(good / perTick),
      spares: count(spares),
    })),
  };
}
