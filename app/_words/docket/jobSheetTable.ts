/*
 * What stands on a job sheet and on the owner's page around names and figures. The bench reads it in the app's own
 * language; what other papers say as well is in the labels of papers.
 */

interface Counted {
  readonly all: string;
  readonly spares: string;
  readonly sure: string;
  /** They stand beside the sizes, and are of all designs. */
  readonly isOneStack: boolean;
}

export const jobSheetTable = {
  makeIt: 'plan when it is made',

  // Head
  for: 'for',
  wanted: 'wanted',
  noDay: 'no day set',
  made: 'made',
  toStock: 'to stock',

  // Printing
  print: (howMuch: string) => `Print ${howMuch}`,
  unattended: (minutes: string) => `${minutes}, unattended`,
  nozzleCheck: 'nozzle check',
  coatedSide: (side: string | null | undefined) => `coated side ${side ?? 'checked'}`,
  mirrored: 'mirrored',
  mirroredSome: 'mirrored where the print says so',
  trimmed: 'dry, trimmed',

  // Blanks
  layOut: 'Lay out the blanks',
  counted: ({ all, spares, sure, isOneStack }: Counted) =>
    `${all} in all, ${spares}${isOneStack ? ' (+, for any design)' : ''}; ${sure} % sure that no size runs out`,
  inAll: 'in all',
  sharedOf: (blank: string) => `Spares of ${blank}, all designs:`,
  shared: 'Spares of all designs:',
  sparesOf: (blank: string) => `Spares of ${blank}`,

  // Warming up
  warmUp: 'Warm up and test on scrap',
  yourTime: (minutes: string) => `${minutes} of your time in the whole job`,
  measured: (unit: string) => `press measured ____ °${unit}`,
  test: (count: number) => `test ${count}`,
  firstGood: 'first good one signed ________',
  everyPrint: (way: string) => `Every print: ${way}`,
  noPress: 'no press',

  // Pressing
  asSeen: 'as seen',
  drawnAsSeen: (side: string) => `${side}, as seen`,
  lies: (isMirrored: boolean) => (isMirrored ? 'mirrored' : 'not mirrored'),
  namesLast: 'names last, each against the list',
  onPaper: (isMirrored: boolean) => (isMirrored ? 'mirrored on paper' : 'not mirrored'),
  noPictureOf: (name: string) => `${name}, no picture kept: F shows which way it lies`,
  noPicture: 'no picture kept: F shows which way it lies',

  // Packing
  pack: 'Check, fold, pack',
  countedBySize: (pieces: string) => `${pieces} counted by size`,
  names: 'each name against the list',
  careCard: 'care card',
  label: 'label legible',
  cleaned: 'pads wiped, log written',
  tally: 'Faults, tallied:',
  faults: ['ghost', 'specks', 'blur', 'yellow', 'reversed'],

  // What to watch
  sameFault: {
    lead: 'Same fault twice running: stop and find it.',
    text: 'A print never washes off, and spares of one size do not help another.',
  },
  passed: 'Passed by you:',
  reason: (sentence: string, why: string) => `${sentence} Reason: “${why}”`,
  watch: 'Watch:',
  more: (count: number) =>
    `${count === 1 ? 'One more caution stands' : `${count} more cautions stand`} on the docket.`,
  ofMoney: (count: number) =>
    `What is said of money (${count === 1 ? 'one caution' : `${count} cautions`}) stands on the docket.`,
  nothing: { lead: 'Every check is passed;', text: 'nothing is to be watched.' },

  // Their files
  files: {
    bench: {
      heading: 'For the bench',
      spoken: 'of the job sheet',
      says: 'No figure of money stands on it. To print it, open the saved file and print it from there.',
    },
    owner: {
      heading: 'For you alone',
      spoken: 'of the costs',
      says: 'What the job costs and leaves, in a file of its own.',
    },
  },
  save: 'Save as PDF',
  beingMade: 'The file is being made.',

  // In its place while a stop stands
  notYet: 'Not to be made yet',
  stopped: 'There is no job sheet while a stop stands:',

  // The owner's page
  ownKind: 'For you alone',
  ownSays: (currency: string) => `Costs in ${currency}. Not for the customer, and not for the bench.`,
  costs: 'What it costs',
  fullCost: 'Full cost',
  leaves: 'What it leaves',
  noPrice: 'No price: a stop stands, see the docket.',
  price: 'Price, without tax',
  fees: 'Fees',
  profit: 'Profit',
  margin: 'Margin',
  markup: 'Markup',
  pays: 'Pays you an hour',
  asked: {
    added: 'Prices asked, tax later',
    inside: 'Prices asked, tax inside',
    none: 'Prices asked, no tax',
    unsaid: 'Prices asked',
  },
  notDecided: 'not decided',
  toStart: (price: string, start: string) => `${price}, ${start} to start`,
  minutes: (yours: string, machines: string) =>
    `${yours} of your time, ${machines} in which machines work alone.`,
} as const;
