/** The grey scale for a change of colour: 5 no change, 1 the greatest, in halves (ISO 105-A02). */
export const gradeWords = {
  '5': '5, no change',
  '4.5': '4.5',
  '4': '4, slight',
  '3.5': '3.5',
  '3': '3, plain to see',
  '2.5': '2.5',
  '2': '2, strong',
  '1.5': '1.5',
  '1': '1, very strong',
} as const;
