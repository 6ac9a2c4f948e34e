import { PDFDocument, type PDFPage, PrintScaling, ReadingDirection } from '@cantoo/pdf-lib';
import type { EmbeddedPicture } from '@/lib/embedding/embeddedPicture';
import type { Face } from '@/lib/lettering/faceTable';
import type { ForeignType } from '@/lib/lettering/foreignType';
import { openLettering } from '@/lib/lettering/openLettering';
import { drawBlock } from './draw/drawBlock';
import { type DrawPicture, placePicture } from './draw/placePicture';
import { closenesses, type Setting } from './draw/setting';
import { flowPages, SIDE } from './flowPages';
import type { Paper } from './paper';
import { picturesOf } from './picturesOf';
import { isRightToLeft } from './words/isRightToLeft';

/** Of a page's head with the room beneath it, points. */
const AGAIN_HIGH = 20;

interface PaperTools {
  /** The files of the type that its texts need. */
  readonly faces: ReadonlyMap<Face, Uint8Array>;
  /** Null where the device draws no letters: then those that the type lacks are an error. */
  readonly foreign: ForeignType | null;
  /** Brings a picture; null where it cannot be had or a page has no words for it. */
  readonly pictureOf: (id: string) => Promise<EmbeddedPicture | null>;
}

interface WrittenPaper {
  readonly bytes: Uint8Array;
  /** Pictures that could not be shown: their places are empty, with a name. */
  readonly lost: readonly string[];
  readonly pages: number;
}

/** Writes a paper as a file. Without a date of its own the same paper gives the same file. */
export async function writePaper(paper: Paper, tools: PaperTools): Promise<WrittenPaper> {
  const { pdf, lost, pages } = await drawnPaper(paper, tools);
  return { bytes: await pdf.save(), lost, pages };
}

interface Drawn extends Omit<WrittenPaper, 'bytes'> {
  readonly pdf: PDFDocument;
}

/** What takes a little more than a page is set closer; what takes two pages even so is not, for it is easier read. */
async function drawnPaper(paper: Paper, tools: PaperTools): Promise<Drawn> {
  const normal = await drawnAs(paper, tools, closenesses.normal);
  if (normal.pages !== 2 || paper.mayTighten !== true) return normal;
  const tight = await drawnAs(paper, tools, closenesses.tight);
  return tight.pages === 1 ? tight : normal;
}

async function drawnAs(paper: Paper, tools: PaperTools, closeness: Setting['closeness']): Promise<Drawn> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  pdf.setTitle(paper.title, { showInWindowTitleBar: true });
  pdf.setLanguage(paper.language);
  pdf.setCreator('Pressminute');
  const preferences = pdf.catalog.getOrCreateViewerPreferences();
  // A rule on it is true only where nothing is scaled.
  preferences.setPrintScaling(PrintScaling.None);
  const fromRight = isRightToLeft(paper.language);
  if (fromRight) preferences.setReadingDirection(ReadingDirection.R2L);
  const lettering = await openLettering(pdf, tools);
  const pictures = new Map<string, DrawPicture>();
  const lost: string[] = [];
  for (const id of picturesOf(paper)) {
    const picture = await tools.pictureOf(id);
    const placed = picture && (await placePicture(pdf, picture));
    if (placed === null) lost.push(id);
    else pictures.set(id, placed);
  }
  const setting: Setting = {
    flow: flowPages(pdf, paper.page, closeness.nearer, againHead(paper, lettering, fromRight)),
    closeness,
    lettering,
    isRightToLeft: fromRight,
    pictureOf: (id) => (id === null ? null : (pictures.get(id) ?? null)),
  };
  paper.blocks.forEach((block, at) => {
    drawBlock(setting, block, paper.blocks[at + 1]);
  });
  drawFeet(setting, paper);
  return { pdf, lost, pages: setting.flow.pages.length };
}
/** Its own name at the head of each further page; null where it says none. */
function againHead({ again = '' }: Paper, lettering: Setting['lettering'], fromRight: boolean) {
  if (again === '') return null;
  return {
    high: AGAIN_HIGH,
    draw(page: PDFPage, top: number) {
      const widthPt = page.getWidth() - 2 * SIDE;
      const align = fromRight ? 'right' : 'left';
      lettering.drawFitted(page, again, { x: SIDE, y: top - 9, size: 9, weight: 700, widthPt, align });
    },
  };
}

/** The name of the paper and which of its pages it is, at the foot of each. */
function drawFeet({ flow, lettering, isRightToLeft: fromRight }: Setting, { title, foot }: Paper): void {
  const { left, right, pages } = flow;
  pages.forEach((page, place, { length }) => {
    const style = { y: 26, size: 8.5, colour: [0.3, 0.3, 0.3] } as const;
    const words = foot.replace('{page}', String(place + 1)).replace('{pages}', String(length));
    const most = (right - left) / 2;
    const wide = Math.min(most, lettering.measure(words, style));
    const room = right - left - wide - 16;
    const [titleX, wordsX] = fromRight ? [right - room, left] : [left, right - wide];
    lettering.drawFitted(page, title, {
      ...style,
      x: titleX,
      widthPt: room,
      align: fromRight ? 'right' : 'left',
    });
    // What a workshop made too long for the foot is shortened, the numbers never: they stand alone then.
    const isLong = lettering.measure(words, style) > most;
    lettering.drawLine(page, isLong ? `${place + 1}/${length}` : words, {
      ...style,
      x: wordsX,
      widthPt: wide,
      align: fromRight ? 'left' : 'right',
    });
  });
}
