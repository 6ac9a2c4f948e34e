// @vitest-environment node
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import type { PictureDecoder } from '@/app/_artwork/decodedPicture';
import { platformZip } from '@/app/_papers/platformZip';
import type { TransferQuestion, TransferReply } from '@/app/_transfers/messages';
import { transferHandler } from '@/app/_transfers/transferHandler';
import type { SheetsToPrint } from '@/lib/exports/sheetsToPrint';
import { sourceOf } from '@/lib/picture/pictureSource';
import { failed, ok } from '@/shared/result';
import { readSheets } from '@/tests/fixtures/readSheets';

const piece = {
  widthMm: 80,
  heightMm: 60,
  turned: false,
  flipped: true,
  fit: 'stretch',
  shown: null,
} as const;
const jobOf = (...pictures: readonly string[]): SheetsToPrint => ({
  title: 'Club shirts',
  widthMm: 210,
  sheets: [
    {
      count: 2,
      heightMm: 297,
      pieces: pictures.map((picture, at) => ({ ...piece, picture, xMm: 10, yMm: 70 * at })),
    },
  ],
});

/** Noise, which nothing packs small. */
const noise = (width: number, height: number, channels: 3 | 4) => {
  let state = 1;
  const bytes = Uint8Array.from({ length: width * height * channels }, () => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) >>> 0;
    return state >>> 24;
  });
  return sharp(bytes, { raw: { width, height, channels } });
};
const blobOf = async (image: { toBuffer(): Promise<Buffer> }) =>
  new Blob([new Uint8Array(await image.toBuffer())]);

/** Unpacks by sharp what a browser would. */
const decoder: PictureDecoder = {
  async decode(bytes, header) {
    try {
      const { data, info } = await sharp(bytes).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
      const source = sourceOf({ width: info.width, height: info.height, rgba: new Uint8Array(data) });
      return ok({
        source,
        thumbnail: () => ({ pixels: source.read({ x: 0, y: 0, width: 1, height: 1 }), bitmap: null }),
        close: () => undefined,
      });
    } catch (error) {
      return failed({ kind: 'cannotDecode', format: header.format, why: String(error) });
    }
  },
  hold: () => {
    throw new Error('nothing is drawn here');
  },
};

/** Runs a job with these files, as the page would bring them. */
async function run(
  job: SheetsToPrint,
  files: ReadonlyMap<string, Blob>,
  changes: Partial<PictureDecoder> = {},
) {
  const replies: TransferReply[] = [];
  const take = transferHandler({
    decoder: { ...decoder, ...changes },
    zip: platformZip,
    type: null,
    post(reply) {
      replies.push(reply);
      if (reply.kind === 'fileWanted') void take({ kind: 'file', file: files.get(reply.key) ?? null });
      if (reply.kind === 'rowsWanted') void take({ kind: 'notDrawn' });
    },
  });
  await take({ kind: 'write', job } satisfies TransferQuestion);
  const last = replies.at(-1);
  return { replies, last, written: last?.kind === 'written' ? last : null };
}

const bytesOf = async (file: Blob | undefined) => new Uint8Array((await file?.arrayBuffer()) ?? []);

describe('the worker that writes transfers', () => {
  it('asks for each picture once, in turn, and tells progress that only rises', async () => {
    const files = new Map([
      ['a', await blobOf(noise(300, 300, 4).png())],
      ['b', await blobOf(noise(30, 30, 3).jpeg())],
    ]);
    const { replies, written } = await run(jobOf('a', 'b', 'a'), files);
    expect(replies.flatMap((reply) => (reply.kind === 'fileWanted' ? [reply.key] : []))).toEqual(['a', 'b']);
    const shares = replies.flatMap((reply) => (reply.kind === 'progress' ? [reply.share] : []));
    expect(shares.length).toBeGreaterThan(10);
    expect(shares).toEqual([...shares].sort((one, other) => one - other));
    const data = await bytesOf(written?.file);
    expect((await getDocument({ data, verbosity: 0 }).promise).numPages).toBe(2);
    expect(written?.file.type).toBe('application/pdf');
  });

  it('packs what a page has no words for by its pixels, without loss, and tells of turned colours', async () => {
    const webp = await blobOf(noise(70, 50, 4).withIccProfile('p3').webp({ lossless: true, exact: true }));
    const woven = await blobOf(noise(40, 30, 3).png({ progressive: true }));
    const { written } = await run(
      jobOf('webp', 'woven'),
      new Map([
        ['webp', webp],
        ['woven', woven],
      ]),
    );
    expect(written?.notes).toEqual(new Map([['webp', 'converted']]));
    const { pictures } = await readSheets(await bytesOf(written?.file));
    for (const [at, file] of [webp, woven].entries()) {
      const found = await pictures[at]?.data();
      const image = sharp(await bytesOf(file));
      const whole = found?.channels === 4 ? image.ensureAlpha() : image.removeAlpha();
      expect(Buffer.from(found?.bytes ?? []).equals(await whole.raw().toBuffer())).toBe(true);
    }
  });

  it('leaves the place of a picture empty that is gone, damaged, cut short, too large or cannot be drawn', async () => {
    const png = await bytesOf(await blobOf(noise(200, 200, 4).png()));
    const holed = png.slice();
    holed.fill(0, 5_000, 9_000);
    const huge = { size: 200_000_000 } as Blob;
    const svg = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1 1"><path d="M0 0h1v1z"/></svg>';
    const files = new Map([
      ['holed', new Blob([holed])],
      ['short', new Blob([png.subarray(0, 9_000)])],
      ['text', new Blob(['no picture'])],
      ['huge', huge],
      ['svg', new Blob([svg])],
      ['good', await blobOf(noise(20, 20, 3).jpeg())],
    ]);
    const { written } = await run(jobOf('gone', ...files.keys()), files);
    expect(written?.lost).toEqual(['gone', 'holed', 'short', 'text', 'huge', 'svg']);
    expect((await readSheets(await bytesOf(written?.file))).pictures).toHaveLength(1);
  });

  it('says what happened where it fails itself', async () => {
    const decode = () => Promise.reject(new Error('no memory is left'));
    const files = new Map([['a', await blobOf(noise(20, 20, 3).webp())]]);
    expect((await run(jobOf('a'), files, { decode })).last).toEqual({
      kind: 'failed',
      why: 'no memory is left',
    });
  });

  it('writes no file without the line that was asked for, and says how to have one', async () => {
    const strip = { xMm: 3, yMm: 3, widthMm: 200, heightMm: 4.5, isUpright: false };
    const waste = { strip, lines: [{ name: 'Club', words: ['Sheet 1 of 1'] }], marks: [] };
    const sheets = [{ count: 1, heightMm: 297, pieces: [], waste }];
    expect((await run({ title: 'Club', widthMm: 210, sheets }, new Map())).last).toEqual({
      kind: 'failed',
      why: 'this browser draws no letters here, so leave out the line in the waste',
    });
  });
});
