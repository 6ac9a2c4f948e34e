import type { PixelBox, PixelGrid } from '@/lib/picture/pixelGrid';

/** White a picture holds: no ink, so it comes out as bare cloth. Shares of the whole box, 0–1. */
export interface WhiteReading {
  /** Solid white or nearly white pixels. */
  readonly share: number;
  /** Those of them that printed parts enclose: white eyes or letters, meant as white. */
  readonly enclosedShare: number;
}

interface WhiteMeter {
  readonly add: (rows: PixelGrid) => void;
  readonly read: () => WhiteReading;
}

/** Each channel at least this, of 255: under 4 % of ink. */
const WHITE = 247;
/** A pixel at least half solid is meant to be seen. */
const SEEN_ALPHA = 128;
/** Cells along the longer side of the map on which enclosed parts are told from the ground. */
const MAP_CELLS = 256;
/** Of a cell that white or clear pixels fill so far, the ground can pass through. */
const OPEN_SHARE = 0.5;

/**
 * Finds white row by row from the top; 8 bits a channel. A coarse map tells white ground that reaches the edge
 * from white that ink encloses; a gap narrower than a cell may close or open.
 */
export function whiteMeter({ width, height }: Pick<PixelBox, 'width' | 'height'>): WhiteMeter {
  const cell = Math.max(1, Math.ceil(Math.max(width, height) / MAP_CELLS));
  const columns = Math.ceil(width / cell);
  const lines = Math.ceil(height / cell);
  const white = new Uint32Array(columns * lines);
  const clear = new Uint32Array(columns * lines);
  let row = 0;
  return {
    add({ height: rows, rgba }) {
      for (let y = 0; y < rows; y += 1, row += 1) {
        countRow(rgba, y * width * 4, width, cell, Math.floor(row / cell) * columns, white, clear);
      }
    },
    read() {
      const sizeOf = (place: number) =>
        Math.min(cell, width - (place % columns) * cell) *
        Math.min(cell, height - Math.floor(place / columns) * cell);
      const isOpen = Uint8Array.from(white, (count, place) =>
        count + (clear[place] ?? 0) >= OPEN_SHARE * sizeOf(place) ? 1 : 0,
      );
      const reached = reachedFromEdge(isOpen, columns, lines);
      let all = 0;
      let enclosed = 0;
      for (const [place, count] of white.entries()) {
        all += count;
        if (isOpen[place] === 1 && reached[place] === 0) enclosed += count;
      }
      const box = width * height;
      return { share: all / box, enclosedShare: enclosed / box };
    },
  };
}

function countRow(
  rgba: PixelGrid['rgba'],
  from: number,
  width: number,
  cell: number,
  line: number,
  white: Uint32Array,
  clear: Uint32Array,
): void {
  for (let x = 0, place = line; x < width; x += cell, place += 1) {
    const end = from + Math.min(width, x + cell) * 4;
    let whites = 0;
    let clears = 0;
    for (let at = from + x * 4; at < end; at += 4) {
      if ((rgba[at + 3] ?? 0) < SEEN_ALPHA) clears += 1;
      else if (Math.min(rgba[at] ?? 0, rgba[at + 1] ?? 0, rgba[at + 2] ?? 0) >= WHITE) whites += 1;
    }
    white[place] = (white[place] ?? 0) + whites;
    clear[place] = (clear[place] ?? 0) + clears;
  }
}

/** Spreads from the edge of the map through open cells, side by side. */
function reachedFromEdge(isOpen: Uint8Array, columns: number, lines: number): Uint8Array {
  const reached = new Uint8Array(isOpen.length);
  const waiting: number[] = [];
  const reach = (column: number, line: number) => {
    if (column < 0 || line < 0 || column >= columns || line >= lines) return;
    const place = line * columns + column;
    if (isOpen[place] === 0 || reached[place] === 1) return;
    reached[place] = 1;
    waiting.push(place);
  };
  for (let column = 0; column < columns; column += 1) {
    reach(column, 0);
    reach(column, lines - 1);
  }
  for (let line = 0; line < lines; line += 1) {
    reach(0, line);
    reach(columns - 1, line);
  }
  for (let place = waiting.pop(); place !== undefined; place = waiting.pop()) {
    const column = place % columns;
    const line = Math.floor(place / columns);
    reach(column - 1, line);
    reach(column + 1, line);
    reach(column, line - 1);
    reach(column, line + 1);
  }
  return reached;
}
