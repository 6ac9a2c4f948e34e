// @vitest-environment node
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import type { PaperQuestion } from '@/app/_papers/messages';
import { paperFile } from '@/app/_papers/paperFile';
import { platformZip } from '@/app/_papers/platformZip';
import { lettersMissing } from '@/lib/papers/lettersMissing';
import { faceFiles } from '@/tests/fixtures/faceFiles';
import { clubGoods, clubQuote, seller } from '@/tests/fixtures/orderPapers';
import { readPages } from '@/tests/fixtures/readPages';

const plain = (channels: 3 | 4) =>
  sharp({ create: { width: 30, height: 36, channels, background: { r: 200, g: 30, b: 30, alpha: 0.5 } } });
const blobOf = async (image: { toBuffer(): Promise<Buffer> }) =>
  new Blob([new Uint8Array(await image.toBuffer())]);

/** The club's quote with a logo and a picture in both its prints. */
const questionOf = (pictures: ReadonlyMap<string, Blob>): PaperQuestion => {
  const [logo, print] = ['a', 'b'].map((letter) => ({ fileId: letter.repeat(64), fileName: 'picture.png' }));
  return {
    kind: 'paper',
    words: [],
    pictures,
    source: {
      kind: 'quote',
      body: {
        ...clubQuote,
        seller: { ...seller, logo: logo ?? null },
        goods: [
          { ...clubGoods, prints: clubGoods.prints.map((one) => ({ ...one, picture: print ?? null })) },
        ],
      },
    },
  };
};

async function writtenWith(logo: Blob, print: Blob) {
  const pictures = new Map([
    ['a'.repeat(64), logo],
    ['b'.repeat(64), print],
  ]);
  const { file, lost } = await paperFile(questionOf(pictures), {
    facesOf: faceFiles,
    foreign: null,
    zip: platformZip,
    // What a browser's canvas does.
    asPng: async (one) => blobOf(sharp(await one.arrayBuffer()).png()).catch(() => null),
  });
  const bytes = new Uint8Array(await file.arrayBuffer());
  return { bytes, lost, pages: (await readPages(bytes)).pages };
}

describe('a paper with pictures', () => {
  it('shows a JPEG as it came, byte for byte, and a see-through PNG twice from one copy', async () => {
    const jpeg = await blobOf(plain(3).jpeg());
    const { bytes, lost, pages } = await writtenWith(jpeg, await blobOf(plain(4).png()));
    expect(lost).toEqual([]);
    expect(pages[0]?.pictures).toBe(3);
    expect(Buffer.from(bytes).includes(Buffer.from(await jpeg.arrayBuffer()))).toBe(true);
  });

  it('shows what only the browser can read through a PNG of it', async () => {
    const { lost, pages } = await writtenWith(await blobOf(plain(3).webp()), await blobOf(plain(3).gif()));
    expect(lost).toEqual([]);
    expect(pages[0]?.pictures).toBe(3);
  });

  it('is written without a picture that is none, and says which', async () => {
    const { lost, pages } = await writtenWith(new Blob(['no picture']), await blobOf(plain(3).png()));
    expect(lost).toEqual(['a'.repeat(64)]);
    expect(pages[0]?.pictures).toBe(2);
  });
});

describe('letters that the type has not', () => {
  it('are named before a paper goes out, wherever they stand', () => {
    const body = { ...clubQuote, customer: { ...clubQuote.customer, name: 'نادي', person: 'Ada →' } };
    const found = lettersMissing({ kind: 'quote', body }, [{ language: 'en', key: 'quote', text: '見積' }]);
    expect(found.map(({ letter }) => letter).sort()).toEqual(
      [...'اديناد→見積'].filter((one, at, all) => all.indexOf(one) === at).sort(),
    );
    expect(lettersMissing({ kind: 'quote', body: clubQuote }, [])).toEqual([]);
  });
});
