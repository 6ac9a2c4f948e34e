import { PDFDocument, PrintScaling } from '@cantoo/pdf-lib';
import type { Face } from '@/lib/lettering/faceTable';
import type { ForeignType } from '@/lib/lettering/foreignType';
import { openLettering } from '@/lib/lettering/openLettering';
import { type Flow, flowPages } from '@/lib/papers/flowPages';
import { type Cover, footOf } from './cover';
import { drawHead, drawSettings, drawWatch } from './coverParts';
import { drawSheets } from './coverSheets';

interface CoverType {
  /** The files of the type that its texts need. */
  readonly faces: ReadonlyMap<Face, Uint8Array>;
  /** Null where the device draws no letters: then those that the type lacks are an error. */
  readonly foreign: ForeignType | null;
}

/** Writes a cover as a file of its own, on plain paper: in the file of the transfers it would come out on their paper. */
export async function writeCover(cover: Cover, type: CoverType): Promise<Uint8Array> {
  // Without a date of its own the same cover gives the same file.
  const pdf = await PDFDocument.create({ updateMetadata: false });
  pdf.setTitle(cover.title, { showInWindowTitleBar: true });
  pdf.setLanguage('en');
  pdf.setCreator('Pressminute');
  pdf.catalog.getOrCreateViewerPreferences().setPrintScaling(PrintScaling.None);
  const lettering = await openLettering(pdf, type);
  const flow: Flow = flowPages(pdf, cover.paper);
  drawHead(flow, cover, lettering);
  drawSettings(flow, cover.settings, lettering);
  drawSheets(flow, cover, lettering);
  drawWatch(flow, cover.watch, lettering);
  flow.pages.forEach((page, place, { length }) => {
    const { left, right } = flow;
    const foot = { y: 26, size: 8.5, colour: [0.3, 0.3, 0.3] } as const;
    const ofPages = footOf(cover, place + 1, length);
    const room = right - left - lettering.measure(ofPages, foot) - 16;
    lettering.drawFitted(page, cover.name, { ...foot, x: left, widthPt: room });
    lettering.drawLine(page, ofPages, { ...foot, x: left, widthPt: right - left, align: 'right' });
  });
  return pdf.save();
}
