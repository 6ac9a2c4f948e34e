import type { Formatter } from '@/app/_words/formatter';
import { floodShareOf, heavyShareOf } from '@/lib/ink/heavyShareOf';
import type { Picture } from '@/shared/schemas/picture';

/** What of a picture's ink is too much for paper; nothing where none is. */
export function heavyWords(
  picture: Pick<Picture, 'heavyShare' | 'grey'>,
  blackShare: number,
  formatter: Formatter,
): string {
  const share = heavyShareOf(picture, blackShare);
  if (share <= 0) return '';
  const limit =
    floodShareOf(picture, blackShare) > 0 ? '250 % in all or 180 % of two colours' : '180 % of two colours';
  return `; ${formatter.share(share)} of it is heavy, over ${limit}`;
}

/** How the job's printer lays grey down. */
export function greyWords(printer: string, blackShare: number, formatter: Formatter): string {
  if (blackShare <= 0) return `${printer} prints grey without black, with all three colours.`;
  return blackShare >= 1
    ? `${printer} prints all grey with black alone.`
    : `${printer} prints ${formatter.share(blackShare)} of the grey with black, the rest with all three colours.`;
}

export const lightInkWords = (printer: string): string =>
  `${printer} has light inks, which are not counted apart: light parts take more millilitres of a thinner ink than is told here.`;

export const unmeasuredGreyWords =
  'This picture was read before it counted how much grey is printed with black. The ink of the whole is right; where a print crops it, its grey is taken to lie as the rest does.';
