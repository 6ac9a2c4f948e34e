import type { EmbeddedPicture, Zip } from '@/lib/embedding/embeddedPicture';
import { embedPixels } from '@/lib/embedding/embedPixels';
import type { PdfFile } from '@/lib/embedding/pdfFile';
import type { Matrix } from '@/lib/embedding/uprightMatrix';
import { writePicture } from '@/lib/embedding/writePicture';
import { atomsOf } from '@/lib/lettering/atoms';
import type { ForeignPicture, ForeignRun, ForeignType } from '@/lib/lettering/foreignType';
import { lettersOf, setText } from '@/lib/lettering/letters';
import { POINTS_PER_MM } from '@/shared/units';
import { boxMatrix, matrixWords } from './pieceMatrix';
import type { SheetWaste, WasteLine } from './sheetsToPrint';
import type { PageBox, WasteStrip } from './wasteStrip';

export interface WasteTools {
  /** The device's own letters, of any script; null where it draws none. */
  readonly type: ForeignType | null;
  readonly zip: Zip;
}

/** What a page has besides its art. */
interface WrittenWaste {
  /** Number of the stream that draws it. */
  readonly contents: number;
  /** Entries of the page's pictures. */
  readonly objects: readonly string[];
}

const SIZE_PT = 3 * POINTS_PER_MM;
/** From the bottom of the strip to the line that letters stand on. */
const BASE_PT = 1.2 * POINTS_PER_MM;
const GAP_PT = 4 * POINTS_PER_MM;

/** @returns writes the waste of one page; words that stand on many are in the file once. */
export function wasteWriter(
  pdf: PdfFile,
  { type, zip }: WasteTools,
): (waste: SheetWaste, page: number, heightMm: number) => Promise<WrittenWaste> {
  const drawn = new Map<string, DrawnWords>();

  return async ({ strip, lines, marks }, page, heightMm) => {
    const line = lines[page];
    const set = strip === null || line === undefined ? null : await setLine(strip, line);
    const contents = pdf.reserve();
    const stream = pdf.begin(contents, '');
    const parts = [
      ...marks.map((mark) => painted(boxMatrix(mark, heightMm))),
      ...(set === null || strip === null ? [] : [lineDrawing(set, strip, heightMm)]),
    ];
    stream.write(new TextEncoder().encode(parts.join('')));
    stream.end();
    const names = new Map((set ?? []).map(({ words }) => [words.name, words.number]));
    return { contents, objects: [...names].map(([name, number]) => `/${name} ${number} 0 R`) };
  };

  /** Only the name is shortened; the rest says what is to be done. */
  async function setLine(strip: WasteStrip, { name, words }: WasteLine): Promise<readonly SetWords[]> {
    // The page tells it with the way out.
    if (type === null)
      throw new Error('this browser draws no letters here, so leave out the line in the waste');
    const rest = words.reduce((sum, text) => sum + GAP_PT + type.width(runOf(text)), 0);
    const short = shortened(name, lengthOf(strip) - rest, type);
    let x = 0;
    const set: SetWords[] = [];
    for (const text of short === '' ? words : [short, ...words]) {
      const found = drawn.get(text) ?? (await draw(text, type));
      drawn.set(text, found);
      set.push({ x, words: found });
      x += found.widthPt + GAP_PT;
    }
    return set;
  }

  async function draw(text: string, device: ForeignType): Promise<DrawnWords> {
    const run = runOf(text);
    const picture = device.draw(run);
    const number = await writePicture(pdf, onWhite(picture, zip), () => undefined);
    return { name: `W${drawn.size + 1}`, number, picture, widthPt: device.width(run) };
  }
}

// Helpers

interface DrawnWords {
  readonly name: string;
  readonly number: number;
  readonly picture: ForeignPicture;
  readonly widthPt: number;
}

interface SetWords {
  /** From the start of the line, points. */
  readonly x: number;
  readonly words: DrawnWords;
}

const runOf = (text: string): ForeignRun => ({
  text,
  weight: 400,
  sizePt: SIZE_PT,
  isRightToLeft: atomsOf(text, 'auto').isRightToLeft,
  colour: [0, 0, 0],
});

/** As much of a name as has room, with dots where it is cut; nothing where not even a letter has. */
function shortened(name: string, roomPt: number, type: ForeignType): string {
  const whole = setText(name).replace(/\s+/g, ' ').trim();
  if (type.width(runOf(whole)) <= roomPt) return whole;
  const letters = lettersOf(whole).map(({ text }) => text);
  const cut = (count: number) => `${letters.slice(0, count).join('').trim()}…`;
  let most = letters.length;
  for (let fits = 0; most - fits > 1; ) {
    const middle = (fits + most) >> 1;
    if (type.width(runOf(cut(middle))) <= roomPt) fits = middle;
    else most = middle;
  }
  return most > 1 ? cut(most - 1) : '';
}

/** Letters as black on white with nothing see-through, which some printers are slow at. */
function onWhite({ widthPx, heightPx, rgba }: ForeignPicture, zip: Zip): EmbeddedPicture {
  const read = ({ y, height }: { y: number; height: number }) => {
    const strip = Uint8Array.from(rgba.subarray(y * widthPx * 4, (y + height) * widthPx * 4));
    for (let at = 0; at < strip.length; at += 4) strip.fill(255 - (strip[at + 3] ?? 0), at, at + 3);
    return { width: widthPx, height, rgba: strip };
  };
  const source = { width: widthPx, height: heightPx, read };
  return embedPixels({ source, bits: 8, hasMask: false, note: null }, zip);
}

const lengthOf = ({ widthMm, heightMm, isUpright }: WasteStrip): number =>
  (isUpright ? heightMm : widthMm) * POINTS_PER_MM;

/** Clipped to the strip, whatever the device's letters are like; made smaller where they are wider than any thought of. */
function lineDrawing(set: readonly SetWords[], strip: WasteStrip, pageHeightMm: number): string {
  const long = lengthOf(strip);
  const high = (strip.isUpright ? strip.widthMm : strip.heightMm) * POINTS_PER_MM;
  const last = set.at(-1);
  const scale = Math.min(1, long / (last === undefined ? long : last.x + last.words.widthPt));
  const pictures = set.map(({ x, words: { name, picture } }) => {
    const { widthPx, heightPx, pixelsPerPt, originPx } = picture;
    const pt = scale / pixelsPerPt;
    const left = x * scale - originPx[0] * pt;
    const low = BASE_PT - (heightPx - originPx[1]) * pt;
    const place: Matrix = [(widthPx * pt) / long, 0, 0, (heightPx * pt) / high, left / long, low / high];
    return `q\n${matrixWords(place)}\n/${name} Do\nQ\n`;
  });
  const place = strip.isUpright ? upwardMatrix(strip, pageHeightMm) : boxMatrix(strip, pageHeightMm);
  return `q\n${matrixWords(place)}\n0 0 1 1 re W n\n${pictures.join('')}Q\n`;
}

const painted = (place: Matrix): string => `q\n${matrixWords(place)}\n0 0 1 1 re f\nQ\n`;

/** A box on the page, with what runs to the right running up. */
function upwardMatrix(box: PageBox, pageHeightMm: number): Matrix {
  const [width, , , height, left, bottom] = boxMatrix(box, pageHeightMm);
  return [0, height, -width, 0, left + width, bottom];
}
