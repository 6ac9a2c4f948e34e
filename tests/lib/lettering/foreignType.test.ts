import { PDFDocument } from '@cantoo/pdf-lib';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { expect, it } from 'vitest';
import type { ForeignRun, ForeignType } from '@/lib/lettering/foreignType';
import { neededFaces } from '@/lib/lettering/missingLetters';
import { openLettering } from '@/lib/lettering/openLettering';
import { faceFiles } from '../../fixtures/faceFiles';

/** A device whose letters are all as wide as they are high: black boxes on their line, ten pixels a point. */
function boxType(): ForeignType & { readonly drawn: ForeignRun[] } {
  const drawn: ForeignRun[] = [];
  const letters = ({ text }: ForeignRun) => [...text].length;
  return {
    drawn,
    width: (run) => letters(run) * run.sizePt,
    draw(run) {
      drawn.push(run);
      const [widthPx, heightPx] = [letters(run) * run.sizePt * 10, run.sizePt * 10];
      const rgba = new Uint8ClampedArray(widthPx * heightPx * 4).fill(255);
      return { widthPx, heightPx, rgba, pixelsPerPt: 10, originPx: [0, heightPx] };
    },
  };
}

async function setWith(text: string, type: ForeignType) {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const faces = await faceFiles(neededFaces([{ text, weight: 400 }]));
  const lettering = await openLettering(pdf, { faces, foreign: type });
  const width = lettering.drawLine(pdf.addPage([600, 400]), text, { x: 50, y: 300, size: 12 });
  const before = lettering.measure(text, { size: 12 });
  const bytes = await pdf.save({ useObjectStreams: false });
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const { fnArray, argsArray } = await (await document.getPage(1)).getOperatorList();
  const pictures = fnArray.flatMap((operator, place) =>
    operator === OPS.paintImageXObject ? [[...fnArray.slice(0, place)].lastIndexOf(OPS.transform)] : [],
  );
  return { width, before, places: pictures.map((at) => [...argsArray[at]].map(Number)) };
}

it('draws letters that no face has as a picture of their own size on the line', async () => {
  const { places, width, before } = await setWith('漢', boxType());
  // 12 points wide and high, where the line begins.
  expect(places).toEqual([[12, 0, 0, 12, 50, 300]]);
  expect(width).toBe(12);
  expect(before).toBe(width);
});

it('hands letters that join to the device together, from the right where they run so', async () => {
  const type = boxType();
  const { places } = await setWith('عربي ab', type);
  expect(type.drawn).toEqual([
    { text: 'عربي', weight: 400, sizePt: 12, isRightToLeft: true, colour: [0, 0, 0] },
  ]);
  // The Latin letters stand at its left: a and b are 561 and 615 thousandths of 12 points wide, a space 260.
  expect(places[0]?.[4]).toBeCloseTo(50 + ((561 + 615 + 260) * 12) / 1000, 2);
});

it('draws the same run once, however often it stands in a file', async () => {
  const type = boxType();
  const { places } = await setWith('漢 a 漢 b 漢', type);
  expect(places).toHaveLength(3);
  expect(type.drawn).toHaveLength(1);
});
