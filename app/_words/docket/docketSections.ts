/** The sections of a docket in the order of the work, each by the id of its element. */
export const docketSections = [
  { id: 'the-job', name: 'The job' },
  { id: 'checks', name: 'Checks' },
  { id: 'sheets', name: 'Sheets' },
  { id: 'cost-sheet', name: 'Cost' },
  { id: 'prices', name: 'Prices' },
  { id: 'curve', name: 'Batch' },
  { id: 'levers', name: 'Raise it' },
  { id: 'charges', name: 'Extras' },
  { id: 'channels', name: 'Ways of selling' },
] as const;

export type SectionId = (typeof docketSections)[number]['id'];
