import type { Formatter } from '@/app/_words/formatter';
import type { PictureInPrint } from '@/lib/artwork/placementOfPicture';
import type { Placement } from '@/shared/schemas/job';

/** Strips thinner than this are not seen. */
const SEEN_MM = 0.5;

/** How a picture lies in its print, in sentences; none where it fits as it is. */
export function pictureWords(
  placed: PictureInPrint,
  fit: Placement['fit'],
  formatter: Formatter,
): readonly string[] {
  const { bareMm, cutMm, clearMm, trimmedMm } = placed;
  const sentences: string[] = [];
  const bare = Math.max(bareMm.across, bareMm.down);
  const cut = Math.max(cutMm.across, cutMm.down);
  if (fit === 'inside' && bare > SEEN_MM) {
    const sides = bareMm.across > bareMm.down ? 'left and right' : 'above and below';
    sentences.push(
      `It comes out at ${formatter.size(placed.widthMm, placed.heightMm)}, with ${formatter.length(bare / 2)} of bare cloth ${sides}.`,
    );
  }
  if (fit === 'fill' && cut > SEEN_MM) {
    const sides = cutMm.across > cutMm.down ? 'left and right' : 'above and below';
    sentences.push(`It fills its place: ${formatter.length(cut / 2)} is cut off ${sides}.`);
  }
  if (fit === 'stretch') sentences.push('It is stretched to its place.');
  if (clearMm !== null && trimmedMm !== null) {
    sentences.push(
      `Clear edges take ${formatter.length(clearMm.across)} of its width and ${formatter.length(clearMm.down)} of its height. Trimmed to ${formatter.size(trimmedMm.width, trimmedMm.height)} it looks the same on the piece.`,
    );
  }
  return sentences;
}
