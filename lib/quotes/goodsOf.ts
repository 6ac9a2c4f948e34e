import { placeInBox } from '@/lib/artwork/placeInBox';
import type { ResolvedLine, ResolvedPlacement } from '@/lib/job/checkedJob';
import type { LabelKey, Labels } from '@/lib/papers/words/englishLabels';
import { formatNumber } from '@/shared/formatNumber';
import type { Artwork } from '@/shared/schemas/artwork';
import type { Blank, fibres } from '@/shared/schemas/blank';
import type { Print } from '@/shared/schemas/job';
import type { GoodsOnPaper } from '@/shared/schemas/paperParts';
import { shortened } from './asName';

/**
 * What a customer is told of a line: the blank, its fibres and colour, and each print with its size and place.
 *
 * @param without prints that are left out
 * @param locale BCP 47 tag of the paper
 */
export function goodsOf(
  jobId: string,
  { line, blank, placements }: ResolvedLine,
  {
    without,
    labels,
    locale,
  }: { readonly without: readonly string[]; readonly labels: Labels; readonly locale: string },
): GoodsOnPaper {
  return {
    jobId,
    lineId: line.id,
    name: line.name,
    says: shortened(saysOf(blank, labels, locale), 1000),
    shape: shapes[blank.kind],
    prints: placements.filter(({ placement }) => !without.includes(placement.id)).flatMap(printsOf),
  };
}

/** What a blank is drawn as. */
export const shapes: Readonly<Record<Blank['kind'], GoodsOnPaper['shape']>> = {
  garment: 'garment',
  bag: 'other',
  cushion: 'other',
  drinkware: 'mug',
  panel: 'panel',
  mat: 'panel',
  tile: 'panel',
  small: 'other',
};

const fibreLabels: Readonly<Record<(typeof fibres)[number], LabelKey>> = {
  polyester: 'fibrePolyester',
  cotton: 'fibreCotton',
  wool: 'fibreWool',
  viscose: 'fibreViscose',
  nylon: 'fibreNylon',
  elastane: 'fibreElastane',
  acrylic: 'fibreAcrylic',
  acetate: 'fibreAcetate',
  other: 'fibreOther',
};

function saysOf({ name, fibres, colour }: Blank, labels: Labels, locale: string): string {
  const made = fibres.map(
    ({ fibre, share }) => `${formatNumber(share * 100, locale)} % ${labels[fibreLabels[fibre]]}`,
  );
  // What the blank's own name says already is not said twice.
  const news = made.filter((part) => !name.toLowerCase().includes(part.toLowerCase()));
  return [name, ...news, colour.name].join(', ');
}

const printsOf = ({ placement, artwork }: ResolvedPlacement): GoodsOnPaper['prints'] =>
  placement.prints.map((print) => ({
    placementId: placement.id,
    name: placement.name,
    position: placement.position,
    sizes: print.sizes,
    ...printedSize(placement, artwork, print),
    dropFromCollarMm: placement.dropFromCollarMm,
    artwork: { artworkId: placement.artworkId, name: artwork.name, version: artwork.version },
    picture: pictureOf(artwork),
  }));

/** A picture of another shape than its place comes out smaller than the place. */
export function printedSize(
  { fit }: Pick<ResolvedPlacement['placement'], 'fit'>,
  { pixels, picture }: Pick<ResolvedPlacement['artwork'], 'pixels' | 'picture'>,
  print: Pick<Print, 'widthMm' | 'heightMm'>,
): Pick<Print, 'widthMm' | 'heightMm'> {
  const drawn = pixels ?? picture;
  const { widthMm, heightMm } = drawn === null ? print : placeInBox(drawn, print, fit);
  return { widthMm, heightMm };
}

/** The picture of an artwork, where papers can show it. */
export const pictureOf = ({
  picture,
}: Pick<Artwork, 'picture'>): GoodsOnPaper['prints'][number]['picture'] =>
  picture === null || !isHash(picture.fileId) ? null : { fileId: picture.fileId, fileName: picture.fileName };

/** Files of pictures are kept under their hash; an id of an earlier way of keeping them names no file that papers could. */
const isHash = (id: string): boolean => /^[0-9a-f]{64}$/.test(id);
