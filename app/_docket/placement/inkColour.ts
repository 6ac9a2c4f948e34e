import type { Artwork } from '@/shared/schemas/artwork';

/** @returns the mean colour of what is printed, as a colour of the screen; null where its ink is not known by channel. */
export function inkColour({ picture, coverage }: Pick<Artwork, 'picture' | 'coverage'>): string | null {
  const ink = coverage?.kind === 'channels' ? coverage : (picture?.coverage ?? null);
  if (ink === null) return null;
  const { cyan, magenta, yellow, black } = ink;
  const light = [cyan, magenta, yellow].map((share) => Math.round(255 * (1 - share) * (1 - black)));
  return `rgb(${light.join(' ')})`;
}
