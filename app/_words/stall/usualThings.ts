/** What most stalls take along besides the goods. [common practice] */
export const usualThings: readonly string[] = [
  'Tin with the float',
  'Card reader, charged',
  'Phone and a spare battery',
  'Price list and cards',
  'Bags',
  'Pen and order pad',
  'Table, cloth and rail',
  'Tent and weights',
  'Permit and proof of insurance',
  'Tape, string and scissors',
];
