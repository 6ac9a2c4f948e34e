import { placeInBox } from '@/lib/artwork/placeInBox';
import { shownPicture } from '@/lib/artwork/shownPicture';
import type { Job, Placement } from '@/shared/schemas/job';
import type { Picture } from '@/shared/schemas/picture';

/**
 * The prints of a picture at the scale they have, when its clear edges are trimmed or put back: what is seen on the
 * piece stays as large as it was. A print that is filled is cropped already and keeps its box.
 *
 * @param before how the picture prints now
 * @param after how it is to print
 */
export function scaledToShown(job: Job, artworkId: string, before: Picture, after: Picture): Job {
  const [was, is] = [shownPicture(before), shownPicture(after)];
  return {
    ...job,
    lines: job.lines.map((line) => ({
      ...line,
      placements: line.placements.map((placement) =>
        placement.artworkId === artworkId && placement.fit !== 'fill'
          ? { ...placement, prints: placement.prints.map((print) => scaled(print, placement.fit, was, is)) }
          : placement,
      ),
    })),
  };
}

function scaled(
  print: Placement['prints'][number],
  fit: Placement['fit'],
  was: Picture,
  is: Picture,
): Placement['prints'][number] {
  const placed = placeInBox(was, print, fit);
  return {
    ...print,
    widthMm: tidy((placed.widthMm * is.width) / was.width),
    heightMm: tidy((placed.heightMm * is.height) / was.height),
  };
}

/** Lengths keep twelve digits: the way there and back leaves no noise. */
const tidy = (lengthMm: number): number => Number(lengthMm.toPrecision(12));
