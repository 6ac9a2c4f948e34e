import type { PlacedPiece } from '@/lib/packing/placedPiece';

/*
 * What stands on a cover page, in words that are made already. Names that somebody typed may be of any script; where one
 * stands inside a sentence it is wrapped in U+2068 and U+2069.
 */

/** A piece on the drawing of a sheet. */
export interface CoverPiece extends PlacedPiece {
  /** The letter that stands for its print on every drawing. */
  readonly key: string;
  readonly name: string;
  /** No picture is kept of it: its place stays empty. */
  readonly isEmpty: boolean;
}

/** A print on a kind of sheet. */
interface CoverPrint {
  readonly key: string;
  readonly name: string;
  readonly details: readonly string[];
}

/** Sheets that are laid alike. */
export interface CoverSheet {
  /** Which of all sheets. */
  readonly heading: string;
  /** How many. */
  readonly copies: string;
  readonly facts: readonly string[];
  /** Lengths in mm; the paper as it lies in the file. */
  readonly widthMm: number;
  readonly heightMm: number;
  /** Border that the printer cannot reach. */
  readonly marginMm: number;
  readonly pieces: readonly CoverPiece[];
  /** Where the roll is cut across, from its start. */
  readonly cuts: readonly { readonly atMm: number; readonly words: string }[];
  /** Of the edge that the drawing has on top. */
  readonly topEdge: string;
  readonly prints: readonly CoverPrint[];
}

/** A heading in the order of the work, with what is to be done. */
interface CoverSettings {
  readonly heading: string;
  readonly rows: readonly {
    readonly name: string;
    readonly value: string;
    /** Whether the maker has told it; else the value says how to find out. */
    readonly isTold: boolean;
  }[];
  /** Beneath a line of 100 mm. */
  readonly rule: string;
}

export interface Cover {
  readonly paper: 'a4' | 'letter';
  /** Of the window that shows the file. */
  readonly title: string;
  /** What this page is, above everything. */
  readonly banner: string;
  readonly name: string;
  readonly under: string;
  readonly total: { readonly figure: string; readonly words: string };
  readonly settings: CoverSettings;
  readonly sheetsHeading: string;
  /** How the drawings are to be read. */
  readonly sheetsNote: string;
  readonly sheets: readonly CoverSheet[];
  readonly watch: { readonly heading: string; readonly sentences: readonly string[] };
  /** What stands behind the heading of sheets that go on on the next page. */
  readonly continued: string;
  /** Words around the numbers at the foot: `page` 1 `of` 3. */
  readonly foot: { readonly page: string; readonly of: string };
}

/** @returns what stands at the foot of a page. */
export const footOf = ({ foot }: Cover, page: number, pages: number): string =>
  `${foot.page} ${page} ${foot.of} ${pages}`;

/** @returns every text of a cover and how thick it is set, before any is. */
export function coverTexts(cover: Cover): readonly { readonly text: string; readonly weight: 400 | 700 }[] {
  const { settings, sheets, watch } = cover;
  const bold = [
    cover.banner,
    cover.name,
    cover.total.figure,
    settings.heading,
    cover.sheetsHeading,
    watch.heading,
    cover.continued,
    ...settings.rows.map(({ value }) => value),
    ...sheets.flatMap(({ heading, copies, prints, pieces }) => [
      heading,
      copies,
      ...prints.flatMap(({ key, name }) => [key, name]),
      ...pieces.map(({ key }) => key),
    ]),
  ];
  const plain = [
    cover.under,
    cover.total.words,
    settings.rule,
    cover.sheetsNote,
    footOf(cover, 1, 1),
    cover.name,
    ...watch.sentences,
    ...settings.rows.flatMap(({ name, value }) => [name, value]),
    ...sheets.flatMap(({ facts, cuts, topEdge, prints, pieces }) => [
      topEdge,
      ...facts,
      ...cuts.map(({ words }) => words),
      ...prints.flatMap(({ details }) => details),
      ...pieces.map(({ name }) => name),
    ]),
  ];
  return [
    ...bold.map((text) => ({ text, weight: 700 as const })),
    ...plain.map((text) => ({ text, weight: 400 as const })),
  ];
}
