import type { Weight } from '@/lib/lettering/faceTable';
import type { Block, Drawing, DrawnPress, Paper, TickGrid } from './paper';

interface PaperText {
  readonly text: string;
  readonly weight: Weight;
}

/** @returns every text of a paper and how thick it is set, before any is. */
export const paperTexts = ({ title, foot, blocks, again = '' }: Paper): readonly PaperText[] => [
  { text: title, weight: 400 },
  { text: foot, weight: 400 },
  { text: again, weight: 700 },
  ...blocks.flatMap((block) => {
    const { bold, plain } = textsOf(block);
    return [
      ...bold.map((text) => ({ text, weight: 700 as const })),
      ...plain.map((text) => ({ text, weight: 400 as const })),
    ];
  }),
];

interface Texts {
  readonly bold: readonly string[];
  readonly plain: readonly string[];
}

function textsOf(block: Block): Texts {
  switch (block.kind) {
    case 'head':
      return { bold: [block.name], plain: [block.tagline, ...block.lines] };
    case 'title': {
      const { title, subject, party, facts } = block;
      return {
        bold: [title, party?.name ?? '', ...facts.map(({ value }) => value)],
        plain: [subject, party?.words ?? '', ...(party?.lines ?? []), ...facts.map(({ name }) => name)],
      };
    }
    case 'goods':
      return together(block.goods.map(textsOfGoods));
    case 'table':
      return {
        bold: [
          ...block.columns.map(({ head }) => head),
          ...block.rows.flatMap((row) => (row.kind === 'group' ? [row.text] : [])),
          ...block.sums.flatMap(({ name, value, look }) => (look === undefined ? [] : [name, value])),
        ],
        plain: [
          block.note,
          ...block.rows.flatMap((row) =>
            row.kind === 'group'
              ? [row.note ?? '']
              : [...row.cells.filter((cell) => typeof cell === 'string'), row.note ?? ''],
          ),
          ...block.sums.flatMap(({ name, value, look }) => (look === undefined ? [name, value] : [])),
        ],
      };
    case 'choices':
      return {
        bold: [block.heading, ...block.boxes.flatMap(({ label, figure }) => [label, figure])],
        plain: block.boxes.flatMap(({ lines }) => lines),
      };
    case 'notes':
      return textsOfNotes(block.notes);
    case 'text':
      return block.isStrong ? { bold: [block.text], plain: [] } : { bold: [], plain: [block.text] };
    case 'amount':
      return { bold: [block.figure], plain: [block.words, block.under] };
    case 'step':
      return {
        bold: [block.heading],
        plain: [
          block.aside,
          ...block.lines,
          ...block.ticks,
          block.tally.words,
          ...block.tally.labels,
          ...textsOfGrid(block.grid),
        ],
      };
    case 'presses':
      return together(block.presses.map(textsOfPress));
    case 'ticks':
      return {
        bold: (block.about ?? []).map(({ heading }) => heading),
        plain: [
          ...block.answers.map(({ text }) => text),
          ...(block.about ?? []).flatMap(({ lines }) => lines),
        ],
      };
    case 'rule':
      return { bold: [], plain: [block.words] };
    case 'sign':
      return { bold: [], plain: block.labels };
    case 'cards':
      return {
        bold: block.cards.map(({ heading }) => heading),
        plain: block.cards.flatMap(({ lines, foot }) => [...lines, foot]),
      };
    case 'prices':
      return {
        bold: [block.name, ...block.rows.flatMap(({ what, figure }) => [what, figure])],
        plain: [block.tagline, ...block.rows.map(({ under }) => under), ...block.foot],
      };
    case 'priceCards':
      return {
        bold: block.cards.flatMap(({ name, figure }) => [name, figure]),
        plain: block.cards.flatMap(({ lines, foot }) => [...lines, foot]),
      };
    case 'list':
      return { bold: [block.heading], plain: block.items };
    default:
      return block satisfies never;
  }
}

function textsOfGoods({
  drawings,
  heading,
  lines,
  prints,
}: Extract<Block, { kind: 'goods' }>['goods'][number]): Texts {
  const notes = textsOfNotes(prints);
  return {
    bold: [
      heading,
      ...notes.bold,
      ...drawings.flatMap(({ prints: drawn }) => drawn.map(({ mark }) => mark ?? '')),
    ],
    plain: [...lines, ...notes.plain, ...drawings.flatMap(textsOfDrawing)],
  };
}

function textsOfPress({ heading, aside, drawings, pair, strong, lines, heads, sizes }: DrawnPress): Texts {
  return {
    bold: [heading, strong, ...sizes.map(({ size }) => size)],
    plain: [
      aside,
      ...lines,
      ...Object.values(heads),
      ...sizes.flatMap(({ good, spares }) => [good, spares]),
      ...drawings.flatMap(textsOfDrawing),
      ...(pair === null ? [] : [pair.under, pair.onPaper.caption, pair.asSeen.caption]),
    ],
  };
}

const textsOfGrid = (grid: TickGrid | null): readonly string[] =>
  grid === null
    ? []
    : [...grid.heads, grid.last, ...grid.rows.flatMap(({ name, ticks, last }) => [name, ...ticks, last])];

const textsOfDrawing = ({ caption, prints }: Drawing): readonly string[] => [
  caption,
  ...prints.flatMap(({ name, size, mark }) => [name, size, mark ?? '']),
];

const textsOfNotes = (notes: Extract<Block, { kind: 'notes' }>['notes']): Texts => ({
  bold: notes.map(({ lead }) => lead),
  plain: notes.map(({ text }) => text),
});

const together = (all: readonly Texts[]): Texts => ({
  bold: all.flatMap(({ bold }) => bold),
  plain: all.flatMap(({ plain }) => plain),
});
