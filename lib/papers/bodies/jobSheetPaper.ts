import type { Block, Drawing, DrawnPress, Note, Paper, PicturePair, TickGrid } from '@/lib/papers/paper';
import type { Labels } from '@/lib/papers/words/englishLabels';
import { figuresOf } from '@/lib/papers/words/figures';
import { filled } from '@/lib/papers/words/labelsFor';

/** What the bench needs of a job, or of a run of several, in words that are made already, in the order of the work. No cost stands on it. */
export interface JobSheetBody {
  readonly page: 'a4' | 'letter';
  readonly language: string;
  readonly locale: string;
  readonly workshop: string;
  /** Of one job, or of what is made together. */
  readonly of: 'job' | 'run';
  /** Its name. */
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
  /** Null where its artwork is gone: then it is only drawn where it sits. */
  readonly pair: PicturePair | null;
  /** In the order in which they are pressed. */
  readonly sizes: readonly {
    readonly size: string;
    readonly good: number;
    readonly spares: number;
    /** They are those of other lines as well, and counted where the blanks are laid out. */
    readonly isShared: boolean;
  }[];
  /** How many good ones a square stands for. */
  readonly perTick: number;
}

export function jobSheetPaper(body: JobSheetBody, labels: Labels): Paper {
  const figures = figuresOf({ ...body, length: 'mm', currency: 'USD' });
  const told = { labels, count: figures.count };
  const sheet = body.of === 'run' ? labels.runSheet : labels.jobSheet;
  return {
    page: body.page,
    language: body.language,
    title: `${sheet}: ${body.job}`,
    mayTighten: true,
    again: `${sheet}: ${body.job}, ${labels.continued}`,
    foot: labels.page,
    blocks: [
      { kind: 'head', name: body.workshop, tagline: '', lines: [sheet], logo: null },
      {
        kind: 'title',
        title: body.job,
        subject: '',
        party: null,
        facts: [{ name: labels.piecesInAll, value: figures.count(body.pieces) }, ...body.facts],
      },
      ...body.before.map((step, at) => stepBlock(step, at + 1)),
      // Read before the first is pressed, and on the page of the first where the sheet goes on over several.
      { kind: 'notes', notes: body.watch, isBoxed: true },
      {
        kind: 'presses',
        presses: body.presses.flatMap((press, at) => drawnPresses(press, body.before.length + at + 1, told)),
      },
      ...body.after.map((step, at) => stepBlock(step, body.before.length + body.presses.length + at + 1)),
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

/** More sizes than this go on in a block of their own, with what is pressed and the heads said again. */
const MOST_SIZES = 16;
/** More spares than this are a figure. */
const MOST_SPARES = 6;

function drawnPresses(press: JobPress, numeral: number, told: StepTold): readonly DrawnPress[] {
  const blocks = Math.max(1, Math.ceil(press.sizes.length / MOST_SIZES));
  return Array.from({ length: blocks }, (_, at) => {
    const sizes = press.sizes.slice(at * MOST_SIZES, (at + 1) * MOST_SIZES);
    const heading = at === 0 ? press.heading : `${press.heading}, ${told.labels.continued}`;
    return drawnPress({ ...press, heading, sizes }, numeral, told);
  });
}

function drawnPress(press: JobPress, numeral: number, { labels, count }: StepTold): DrawnPress {
  const { heading, aside, strong, lines, drawings, pair, sizes, perTick } = press;
  return {
    heading: headed(heading, numeral),
    ...{ aside, strong, lines, drawings, pair },
    heads: {
      size: labels.size,
      good: labels.good,
      ticks: perTick === 1 ? labels.tickGood : filled(labels.tickSeveral, { count: count(perTick) }),
      spares: labels.spares,
    },
    sizes: sizes.map(({ size, good, spares, isShared }) => ({
      size,
      good: count(good),
      ticks: Math.ceil(good / perTick),
      scrap: spares <= MOST_SPARES && !isShared ? spares : 0,
      spares:
        spares === 0
          ? labels.noSpare
          : isShared
            ? labels.sharedSpare
            : spares <= MOST_SPARES
              ? ''
              : count(spares),
    })),
  };
}
