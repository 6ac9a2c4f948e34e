/** Ids of the blanks and pictures that a first visit finds beside its jobs; a maker's own never have them. */
export const exampleThingIds: readonly string[] = [
  'white-shirt',
  'white-mug',
  'club-crest',
  'hill-path',
  'fern',
  'lighthouse',
  'otter',
  'star-map',
  'fern-strip',
  'otter-strip',
  'star-map-strip',
];
