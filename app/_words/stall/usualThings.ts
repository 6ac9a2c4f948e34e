/** What most stalls take along besides the goods. [common practice] */
export const usualThings: readonly string[] = [
  'Tin with the float',
  'Card reader, charged',
  'A second way to take payment',
  'Phone and a spare battery',
  'Price list and cards',
  'Bags',
  'Pen and order pad',
  'Table, cloth and rail',
  'Tent, side walls and weights',
  'Waterproof covers for card and cartons',
  'Permit and proof of insurance',
  'Tape, string and scissors',
];
