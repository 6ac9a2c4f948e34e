import type { Blank, Position } from '@/shared/schemas/blank';

/** Kinds of blank as the trade calls them. */
export const blankKindWords: Readonly<Record<Blank['kind'], string>> = {
  garment: 'Shirt or other garment',
  bag: 'Bag or tote',
  cushion: 'Cushion cover',
  drinkware: 'Mug or other drinkware',
  panel: 'Panel',
  mat: 'Mat',
  tile: 'Tile or slate',
  small: 'Small piece',
};

/** Fibres as sewn labels name them. */
export const fibreWords: Readonly<Record<Blank['fibres'][number]['fibre'], string>> = {
  polyester: 'Polyester',
  cotton: 'Cotton',
  wool: 'Wool',
  viscose: 'Viscose',
  nylon: 'Nylon',
  elastane: 'Elastane',
  acrylic: 'Acrylic',
  acetate: 'Acetate',
  other: 'Other',
};

/** What makes the surface take dye. */
export const coatingWords: Readonly<Record<Blank['coating'], string>> = {
  cloth: 'Cloth: needs none',
  coated: 'Coated for sublimation',
  uncoated: 'Not coated',
  unknown: 'Not known',
};

/** Who brings the blanks. */
export const supplierWords: Readonly<Record<Blank['suppliedBy'], string>> = {
  maker: 'You buy them',
  customer: 'The customer brings them',
};

/** Places on a blank. */
export const positionWords: Readonly<Record<Position, string>> = {
  front: 'Front',
  back: 'Back',
  leftChest: 'Left chest',
  rightChest: 'Right chest',
  leftSleeve: 'Left sleeve',
  rightSleeve: 'Right sleeve',
  wrap: 'Wrap',
  face: 'Face',
};

/** The choices of a field from its words. */
export const choicesOf = (words: Readonly<Record<string, string>>) =>
  Object.entries(words).map(([value, label]) => ({ value, label }));
