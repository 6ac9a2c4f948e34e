/** Thickness of the type. */
export type Weight = 400 | 700;

/** The parts the type is published in, in the order a letter looks for one that has it. */
export const typeParts = [
  'latin',
  'vietnamese',
  'latin-ext',
  'greek',
  'greek-ext',
  'cyrillic',
  'cyrillic-ext',
  'hebrew',
] as const;

export type TypePart = (typeof typeParts)[number];

/** One file of the type. */
export type Face = `${TypePart}-${Weight}`;

/**
 * The code points that the files really have, both weights alike; what the package declares is more (arrows, say). Known
 * before any file is there, so that what lacks can be said and only what is needed is fetched.
 */
const ranges: Readonly<Record<TypePart, string>> = {
  latin:
    '20-7e a0-ff 131 152-153 2bb-2bc 2c6 2da 2dc 300-301 303-304 308-309 323 329 2002 2009 2013-2014 2018-201a 201c-201e 2022 2026 2032-2033 2039-203a 2044 20ac 2122 2212 fffd',
  vietnamese:
    '20 a0 102-103 110-111 128-129 168-169 1a0-1a1 1af-1b0 300-301 303-304 308-309 323 329 1ea0-1ef9 20ab',
  'latin-ext':
    '20 a0 100-130 132-151 154-2ba 2bc-2c5 2c7-2cc 2ce-2d7 2dd-301 303-304 308-309 323 329 1d00-1dbf 1e00-1e9f 1ef2-1eff 2020 20a0-20ab 20ad-20c0 2113 2c60-2c7f a720-a7ca a7d0-a7d1 a7d3 a7d5-a7d9 a7f2-a7ff',
  greek: '20 a0 370-377 37a-37f 384-38a 38c 38e-3a1 3a3-3e1 3f0-3ff',
  'greek-ext':
    '20 a0 1f00-1f15 1f18-1f1d 1f20-1f45 1f48-1f4d 1f50-1f57 1f59 1f5b 1f5d 1f5f-1f7d 1f80-1fb4 1fb6-1fc4 1fc6-1fd3 1fd6-1fdb 1fdd-1fef 1ff2-1ff4 1ff6-1ffe',
  cyrillic: '20 a0 301 400-45f 490-491 4b0-4b1 2116',
  'cyrillic-ext': '20 a0 460-48f 492-4af 4b2-52f 1c80-1c88 20b4 2de0-2dff a640-a69f fe2e-fe2f',
  hebrew:
    '20 2d a0 307-308 591-5c7 5d0-5ea 5ef-5f4 2010 20aa 25cc fb1d-fb36 fb38-fb3c fb3e fb40-fb41 fb43-fb44 fb46-fb4f',
};

/** @returns the first part of the type that has all of a letter with its marks; null where none has. */
export function partOf(letter: string): TypePart | null {
  const points = [...letter].map((character) => character.codePointAt(0) ?? 0);
  return typeParts.find((part) => points.every((point) => codePoints(part).has(point))) ?? null;
}

/** @returns the code points of a part. */
export function codePoints(part: TypePart): ReadonlySet<number> {
  const known = unfolded.get(part);
  if (known !== undefined) return known;
  const points = new Set<number>();
  for (const range of ranges[part].split(' ')) {
    const [first = 0, last = first] = range.split('-').map((end) => Number.parseInt(end, 16));
    for (let point = first; point <= last; point += 1) points.add(point);
  }
  unfolded.set(part, points);
  return points;
}

const unfolded = new Map<TypePart, ReadonlySet<number>>();
