/** Values of a column by the id of their row. */
export type Figures = Readonly<Record<string, number>>;

/** One of the few figures through which a quantity moves what a piece costs; a piece's cost is linear in each. */
interface OrderFigure {
  /** The input that is moved to weigh it, and where to. */
  readonly id: string;
  readonly probe: number;
  readonly of: (figures: Figures) => number;
  /** Place of the figure that the same input moves too. */
  readonly after?: number;
}

/** @returns the inputs of a case that a quantity moves, each by the same with every piece of the line. */
export const movedInputs = (slots: number): readonly string[] => [
  'pieces',
  'jobPieces',
  ...Array.from({ length: slots }, (_, slot) => [`group_${slot + 1}`, `designPieces_${slot + 1}`]).flat(),
];

/**
 * A piece's share of its line, of the job, of sessions after the first, of the sheets of each print, of each design.
 *
 * @param slots placements of the grid
 * @param perSession pieces that one session carries; null where one carries all
 */
export function orderFigures(slots: number, perSession: number | null): readonly OrderFigure[] {
  const share = (id: string): OrderFigure => ({ id, probe: 0.5, of: (figures) => 1 / figureOf(figures, id) });
  const sheets = (slot: number): OrderFigure => {
    // Named once: the sum is asked for at hundreds of orders.
    const [id, ups] = [`group_${slot}`, `ups_${slot}`];
    return {
      id,
      probe: 0.5,
      of: (figures) => {
        const group = figureOf(figures, id);
        return Math.ceil(group / figureOf(figures, ups)) / group;
      },
    };
  };
  const laterSessions: readonly OrderFigure[] =
    perSession === null
      ? []
      : [
          {
            id: 'jobPieces',
            probe: 2 * perSession,
            after: 1,
            of: (figures) => {
              const pieces = figureOf(figures, 'jobPieces');
              return (Math.ceil(pieces / perSession) - 1) / pieces;
            },
          },
        ];
  return [
    share('pieces'),
    share('jobPieces'),
    ...laterSessions,
    ...Array.from({ length: slots }, (_, slot) => [
      sheets(slot + 1),
      share(`designPieces_${slot + 1}`),
    ]).flat(),
  ];
}

const figureOf = (figures: Figures, id: string): number => figures[id] ?? 1;
