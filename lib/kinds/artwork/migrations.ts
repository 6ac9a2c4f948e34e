import { isPlainObject } from '@/lib/merging/sameValue';

/** Version 1 to 2: what is read from a file; figures entered until now stay the maker's own. */
export const artworkWithPicture = (body: unknown): unknown =>
  isPlainObject(body) ? { ...body, picture: null } : body;

/** Version 2 to 3: nobody was asked for the smallest letters and lines, nor for a colour to match; pictures were printed with their clear edges. */
export const artworkWithFinest = (body: unknown): unknown =>
  isPlainObject(body)
    ? {
        ...body,
        finest: null,
        colourMatch: 'free',
        picture: isPlainObject(body.picture) ? { ...body.picture, trimmed: false } : body.picture,
      }
    : body;

/** Version 4 to 5: where the grey lies nobody measured, and of a profile it was known only that there was one. */
export const artworkWithGrey = (body: unknown): unknown =>
  isPlainObject(body) && isPlainObject(body.picture)
    ? { ...body, picture: { ...body.picture, grey: null, profile: profileOfTag(body.picture.colourTag) } }
    : body;

function profileOfTag(tag: unknown): 'sRGB' | 'unknown' | null {
  if (tag === 'sRGB') return 'sRGB';
  return tag === 'profile' ? 'unknown' : null;
}
