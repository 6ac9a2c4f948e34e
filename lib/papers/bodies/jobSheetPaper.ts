import type { Block, Drawing, Paper } from '@/lib/papers/paper';
import type { Labels } from '@/lib/papers/words/englishLabels';
import { figuresOf } from '@/lib/papers/words/figures';
import { textLines } from './heading';

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
  readonly steps: readonly JobStep[];
  /** What to mind at the press. */
  readonly watch: readonly string[];
}

interface JobStep {
  readonly heading: string;
  readonly aside: string;
  readonly ticks: readonly string[];
  /** How it is pressed, and where it sits. */
  readonly lines: readonly string[];
  readonly drawings: readonly Drawing[];
  readonly sizes: readonly { readonly size: string; readonly good: number; readonly spares: number }[];
}

/** More pieces of a size than this are counted, not ticked. */
const MOST_TICKS = 40;

export function jobSheetPaper(body: JobSheetBody, labels: Labels): Paper {
  const figures = figuresOf({ ...body, length: 'mm', currency: 'USD' });
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
      ...body.steps.flatMap((step, at) => stepBlocks(step, at + 1, labels, figures.count)),
      ...watchBlocks(body.watch, labels),
      { kind: 'sign', labels: [labels.goodAndScrapped, labels.minutesTaken, labels.packedBy] },
    ],
  };
}

// Helpers

function stepBlocks(
  { heading, aside, ticks, lines, drawings, sizes }: JobStep,
  numeral: number,
  labels: Labels,
  count: (count: number) => string,
): readonly Block[] {
  const title = `${numeral}. ${heading}`;
  const told = textLines([aside, ...lines].join('\n'));
  const head: readonly Block[] =
    drawings.length > 0
      ? [{ kind: 'goods', goods: [{ drawings, heading: title, lines: told, prints: [] }], isLarge: false }]
      : [
          { kind: 'text', text: title, isStrong: true },
          ...(told.length > 0 ? [{ kind: 'text', text: told.join('\n'), isStrong: false } as const] : []),
        ];
  return [
    ...head,
    ...(ticks.length > 0
      ? [{ kind: 'ticks', answers: ticks.map((text) => ({ text, lines: 0 })) } as const]
      : []),
    ...(sizes.length > 0
      ? [
          {
            kind: 'table',
            columns: [
              { head: labels.size, isFigure: false },
              { head: labels.good, isFigure: true },
              { head: labels.tickGood, isFigure: false },
              { head: labels.spares, isFigure: true },
            ],
            rows: sizes.map(({ size, good, spares }) => ({
              kind: 'row' as const,
              cells: [size, count(good), good > MOST_TICKS ? '' : { ticks: good }, count(spares)],
            })),
            sums: [],
            note: '',
          } as const,
        ]
      : []),
  ];
}

const watchBlocks = (watch: readonly string[], labels: Labels): readonly Block[] =>
  watch.length === 0
    ? []
    : [
        { kind: 'text', text: labels.watch, isStrong: true },
        { kind: 'notes', notes: watch.map((text) => ({ lead: '', text })) },
      ];
