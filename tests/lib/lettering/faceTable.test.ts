import fontkit from '@cantoo/fontkit';
import { expect, it } from 'vitest';
import { codePoints, type Face, partOf, typeParts } from '@/lib/lettering/faceTable';
import { missingLetters, neededFaces } from '@/lib/lettering/missingLetters';
import { faceFiles } from '../../fixtures/faceFiles';

/** Line breaks, marks of order and the like, which have no shape. */
const SHAPELESS = new Set([0, 0xd, 0x200b, 0x200c, 0x200d, 0x200e, 0x200f, 0xfeff, 0xffff]);

it.each(typeParts)('the table says of %s what its files have, in both weights', async (part) => {
  const faces: readonly Face[] = [`${part}-400`, `${part}-700`];
  for (const bytes of (await faceFiles(faces)).values()) {
    const type = fontkit.create(bytes);
    const has = 'characterSet' in type ? type.characterSet.filter((point) => !SHAPELESS.has(point)) : [];
    expect(codePoints(part)).toEqual(new Set(has));
  }
});

it('asks for the files that the letters need and no others', () => {
  expect(neededFaces([{ text: 'Club', weight: 400 }])).toEqual(['latin-400']);
  expect(
    neededFaces([
      { text: 'Erdő', weight: 700 },
      { text: 'שלום', weight: 400 },
    ]),
  ).toEqual(['latin-700', 'latin-ext-700', 'latin-400', 'hebrew-400']);
});

it('sets a letter typed apart from its marks by the file that has them together', () => {
  expect(partOf('ễ'.normalize('NFC'))).toBe('vietnamese');
  expect(neededFaces([{ text: 'ễ'.normalize('NFD'), weight: 400 }])).toEqual(['latin-400', 'vietnamese-400']);
});

it('names what no file has, once, with its code point', () => {
  expect(missingLetters(['عع', 'a→b', '👩‍👧', 'Nguyễn ő שלום Ж', 'a\u0007b\nc\td'])).toEqual([
    { letter: 'ع', codePoints: 'U+0639', fate: 'picture' },
    { letter: '→', codePoints: 'U+2192', fate: 'picture' },
    { letter: '👩‍👧', codePoints: 'U+1F469 U+200D U+1F467', fate: 'picture' },
    { letter: '\u0007', codePoints: 'U+0007', fate: 'leftOut' },
  ]);
});

it('finds nothing amiss with marks that only order a text', () => {
  expect(missingLetters(['\u2068שלום\u2069 \u200ea\u00adb\u2060'])).toEqual([]);
});
