import type { ResolvedLine, ResolvedPlacement } from '@/lib/job/checkedJob';
import type { LabelKey, Labels } from '@/lib/papers/words/englishLabels';
import { formatNumber } from '@/shared/formatNumber';
import type { Blank, fibres } from '@/shared/schemas/blank';
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

const shapes: Readonly<Record<Blank['kind'], GoodsOnPaper['shape']>> = {
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
  return [name, ...made, colour.name].join(', ');
}

const printsOf = ({ placement, artwork }: ResolvedPlacement): GoodsOnPaper['prints'] =>
  placement.prints.map(({ sizes, widthMm, heightMm }) => ({
    placementId: placement.id,
    name: placement.name,
    position: placement.position,
    sizes,
    widthMm,
    heightMm,
    dropFromCollarMm: placement.dropFromCollarMm,
    artwork: { artworkId: placement.artworkId, name: artwork.name, version: artwork.version },
    picture: pictureOf(artwork),
  }));

const pictureOf = ({ picture }: ResolvedPlacement['artwork']): GoodsOnPaper['prints'][number]['picture'] =>
  picture === null || !isHash(picture.fileId) ? null : { fileId: picture.fileId, fileName: picture.fileName };

/** Files of pictures are kept under their hash; an id of an earlier way of keeping them names no file that papers could. */
const isHash = (id: string): boolean => /^[0-9a-f]{64}$/.test(id);
