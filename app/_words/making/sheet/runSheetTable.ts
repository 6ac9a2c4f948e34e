/** What a run sheet says beside what every job sheet does. */
export const runSheetTable = {
  layOut: 'Lay out the stacks',
  laidOut: (all: string, spares: string) => `${all} in all, ${spares}`,
  scarce: (stack: string) => `${stack}, no spare`,
  drying: (times: string) => `drying ${times}`,
  ofJob: (heading: string, name: string) => `${heading}, ${name}`,
  of: (heading: string, name: string) => `${name}: ${heading}`,
  stops: {
    lead: 'Three spoiled in twenty: stop and find the cause.',
    text: 'Press one and look at it, then three, then go on.',
  },
  changed: (names: string) => ({
    lead: 'As the run began.',
    text: `${names} changed since; this sheet goes by what was frozen then.`,
  }),
  missing: (names: string) => ({
    lead: 'Not on this sheet.',
    text: `${names}: no longer here, or without sums now. The press goes by what was frozen.`,
  }),
  file: {
    heading: 'For the bench',
    spoken: 'of the run sheet',
    says: 'No figure of money stands on it. To print it, open the saved file and print it from there.',
  },
} as const;
