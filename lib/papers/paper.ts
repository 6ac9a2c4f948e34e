/*
 * A paper in plain parts, in words that are made already: what stands on it, not where. Names that somebody typed may be
 * of any script; where one stands inside a sentence it is wrapped in U+2068 and U+2069.
 */

export interface Paper {
  readonly page: 'a4' | 'letter';
  /** A tag of BCP 47, which says as well whether pages are read from the right. */
  readonly language: string;
  /** Of the window that shows the file, and at the foot of each page. */
  readonly title: string;
  /** Words at the foot: `page {page} of {pages}`. */
  readonly foot: string;
  readonly blocks: readonly Block[];
  /** Said at the head of each further page, for whoever finds it apart from the first. */
  readonly again?: string;
  /** Whether it is set closer where it then stands on one page, so that nothing is signed away from what it says. */
  readonly mayTighten?: boolean;
}

/** A picture by the SHA-256 of its file; null where none is kept. */
type PictureId = string | null;

export type Block =
  /** Who writes. */
  | {
      readonly kind: 'head';
      readonly name: string;
      readonly tagline: string;
      readonly lines: readonly string[];
      readonly logo: PictureId;
    }
  | TitleBlock
  | { readonly kind: 'goods'; readonly goods: readonly DrawnGoods[]; readonly isLarge: boolean }
  | TableBlock
  | { readonly kind: 'choices'; readonly heading: string; readonly boxes: readonly Choice[] }
  /** Terms, in two columns. */
  | { readonly kind: 'notes'; readonly notes: readonly Note[]; readonly isBoxed?: boolean }
  | { readonly kind: 'text'; readonly text: string; readonly isStrong: boolean }
  /** The one figure that a paper is about. */
  | { readonly kind: 'amount'; readonly words: string; readonly figure: string; readonly under: string }
  /** A step of the work, with things to tick off and faults to count. */
  | {
      readonly kind: 'step';
      readonly heading: string;
      readonly aside: string;
      readonly lines: readonly string[];
      readonly ticks: readonly string[];
      readonly tally: { readonly words: string; readonly labels: readonly string[] };
      readonly grid: TickGrid | null;
    }
  /** What is done at the press. */
  | { readonly kind: 'presses'; readonly presses: readonly DrawnPress[] }
  /** Answers to tick. */
  | {
      readonly kind: 'ticks';
      readonly answers: readonly { readonly text: string; readonly lines: number }[];
      /** What they are about, said again where they stand on a later page than it. */
      readonly about?: readonly { readonly heading: string; readonly lines: readonly string[] }[];
    }
  /** A line of 100 mm. */
  | { readonly kind: 'rule'; readonly words: string }
  | { readonly kind: 'sign'; readonly labels: readonly string[] }
  /** Cards to cut out. */
  | { readonly kind: 'cards'; readonly cards: readonly Card[] }
  /** Prices to be read from afar: large, one a row. */
  | {
      readonly kind: 'prices';
      readonly name: string;
      readonly tagline: string;
      readonly rows: readonly LargePrice[];
      /** Beneath the rows, at either side. */
      readonly foot: readonly [string, string];
    }
  /** Cards with one large price, to cut out. */
  | { readonly kind: 'priceCards'; readonly cards: readonly PriceCard[] }
  /** Short texts, several beside each other. */
  | { readonly kind: 'list'; readonly heading: string; readonly items: readonly string[] };

export interface LargePrice {
  readonly what: string;
  readonly under: string;
  readonly figure: string;
  /** Stands in a box: an offer beside the prices of single pieces. */
  readonly isOffer: boolean;
}

export interface PriceCard {
  readonly name: string;
  readonly figure: string;
  /** Further prices, each with what it is for. */
  readonly lines: readonly string[];
  readonly foot: string;
}

interface TitleBlock {
  readonly kind: 'title';
  readonly title: string;
  /** What it is about. */
  readonly subject: string;
  /** Whom it is for: a word, a name, and what stands beneath. */
  readonly party: { readonly words: string; readonly name: string; readonly lines: readonly string[] } | null;
  readonly facts: readonly { readonly name: string; readonly value: string }[];
}

export interface DrawnGoods {
  readonly drawings: readonly Drawing[];
  readonly heading: string;
  readonly lines: readonly string[];
  /** What is told of each, with the mark of its place where there are several. */
  readonly prints: readonly (Note & Pick<DrawnPrint, 'mark'>)[];
}

/** Things to tick off by two names: blanks of several lines by size. */
export interface TickGrid {
  readonly heads: readonly string[];
  readonly last: string;
  readonly rows: readonly {
    readonly name: string;
    /** One a head; nothing to tick where empty. */
    readonly ticks: readonly string[];
    readonly last: string;
  }[];
}

/** A print at the press: where it sits, how it is pressed, a square for every good piece or several. */
export interface DrawnPress {
  readonly heading: string;
  readonly aside: string;
  readonly drawings: readonly Drawing[];
  /** What the press is set to; empty where it is said once for all. */
  readonly strong: string;
  readonly lines: readonly string[];
  /** Its picture twice; where it cannot be shown, an F as it lies on the paper, beside the drawing. */
  readonly pair: PicturePair | null;
  readonly heads: Readonly<Record<'size' | 'good' | 'ticks' | 'spares', string>>;
  readonly sizes: readonly {
    readonly size: string;
    readonly good: string;
    readonly ticks: number;
    /** Squares for those that may be spoiled. */
    readonly scrap: number;
    /** In the place of these squares where there are none, or too many. */
    readonly spares: string;
  }[];
}

/** Which way the words of a picture read. */
export type Reads = 'right' | 'reversed';

/** A picture as it lies on the paper, and as it is seen on the piece. */
export interface PicturePair {
  /** What it is called, beneath both. */
  readonly under: string;
  readonly picture: PictureId;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly onPaper: PairSide;
  readonly asSeen: PairSide;
}

interface PairSide {
  readonly caption: string;
  /** Whether the picture is turned as it is kept. */
  readonly isFlipped: boolean;
  readonly reads: Reads;
}

/** One side of a piece with its prints in their places. Lengths in mm. */
export interface Drawing {
  readonly shape: 'front' | 'back' | 'mug' | 'panel' | 'other';
  readonly caption: string;
  readonly prints: readonly DrawnPrint[];
}

export interface DrawnPrint {
  readonly name: string;
  /** Stands in its place, and before what is told of it, where one of the goods can show neither picture nor name. */
  readonly mark?: string;
  /** Its printed size, told beside it. */
  readonly size: string;
  readonly position: 'middle' | 'leftChest' | 'rightChest' | 'leftSleeve' | 'rightSleeve';
  readonly widthMm: number;
  readonly heightMm: number;
  readonly dropMm: number | null;
  readonly picture: PictureId;
  /** Which way its words read: then an F stands that way where its picture cannot be shown. */
  readonly reads?: Reads;
}

interface TableColumn {
  readonly head: string;
  readonly isFigure: boolean;
}

/** Words, or so many squares to tick. */
type Cell = string | { readonly ticks: number };

/** Rows with as many cells as there are columns. */
export type Row =
  | { readonly kind: 'row'; readonly cells: readonly Cell[]; readonly note?: string }
  /** What the rows beneath belong to. */
  | { readonly kind: 'group'; readonly text: string; readonly note?: string };

export interface Sum {
  readonly name: string;
  readonly value: string;
  /** The total is large; what is strong is bold. */
  readonly look?: 'total' | 'strong';
}

export interface TableBlock {
  readonly kind: 'table';
  readonly columns: readonly TableColumn[];
  readonly rows: readonly Row[];
  readonly sums: readonly Sum[];
  /** Beside the sums. */
  readonly note: string;
  /** To be filled by hand: rows have room to write in, and each column its share of the width. */
  readonly shares?: readonly number[];
}

interface Choice {
  readonly label: string;
  readonly figure: string;
  readonly lines: readonly string[];
  readonly isAsked: boolean;
}

/** A text that begins with a few bold words. */
export interface Note {
  readonly lead: string;
  readonly text: string;
}

interface Card {
  readonly heading: string;
  readonly lines: readonly string[];
  readonly foot: string;
}
