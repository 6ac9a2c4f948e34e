/** Units in which a rate may be typed. `money` stands for the workshop's currency. */
export type RateUnit =
  | 'money/h'
  | 'money/year'
  | 'h/year'
  | 'money/kWh'
  | 'money/mL'
  | 'mL/in2'
  | 'mL/m2'
  | 'mL'
  | 'min'
  | 'share'
  | 'money/order'
  | 'money/mi'
  | 'money/km'
  | 'money/sheet'
  | 'money/m'
  | 'money/press'
  | 'money/piece'
  | 'money'
  | 'kW'
  | 'sheets'
  | 'presses'
  | 'years'
  | 'sheets/year'
  | 'presses/year'
  | 'money/ticket'
  | 'pieces';

export type RateGroup = 'pay' | 'house' | 'ink' | 'power' | 'minutes' | 'spoilage' | 'packing' | 'price';

export interface RateDefinition {
  readonly group: RateGroup;
  /** What the maker calls it. */
  readonly label: string;
  /** First unit is the usual one. */
  readonly units: readonly [RateUnit, ...RateUnit[]];
  /** Starting value in the first unit, from memory of common practice; shown as typical until replaced. */
  readonly typical: number;
  /** Values outside are questioned (RATE-03), in the first unit. From memory. */
  readonly plausible: readonly [number, number];
  /** What moves when it moves, in one sentence. */
  readonly changes: string;
  /** Place in the walk through a new workshop; absent for rates that can wait. */
  readonly asked?: number;
}

const minutesOf = (label: string, typical: number, changes: string, asked?: number): RateDefinition => ({
  group: 'minutes',
  label,
  units: ['min'],
  typical,
  plausible: [0, 480],
  changes,
  ...(asked === undefined ? {} : { asked }),
});

/**
 * The rates of a workshop that hold for every job, by the name they have in formulas. One row here gives a
 * rate its schema, its field on the workshop screen, its name in the grid and its plausibility check.
 */
export const rateCatalogue = {
  wage: {
    group: 'pay',
    label: 'Your pay',
    units: ['money/h'],
    typical: 18,
    plausible: [5, 150],
    changes: 'Every minute you work on a job costs this. Under about sixteen pieces it is the biggest cost.',
    asked: 1,
  },
  restAllowance: {
    group: 'pay',
    label: 'Allowance for rest and interruptions',
    units: ['share'],
    typical: 0,
    plausible: [0, 0.5],
    changes: 'Lengthens all paid minutes by this share. 0 where your minutes already include it.',
  },
  overheadPerYear: {
    group: 'house',
    label: 'Running the workshop for a year',
    units: ['money/year'],
    typical: 3000,
    plausible: [100, 60000],
    changes: 'Room, insurance, phone, bookkeeping, samples: spread over the hours you work.',
    asked: 2,
  },
  overheadHours: {
    group: 'house',
    label: 'Hours worked on jobs in a year',
    units: ['h/year'],
    typical: 800,
    plausible: [20, 2500],
    changes: 'Fewer hours make each hour carry more of the yearly cost.',
    asked: 3,
  },
  tariff: {
    group: 'power',
    label: 'Electricity',
    units: ['money/kWh'],
    typical: 0.18,
    plausible: [0.03, 1.5],
    changes: 'About a cent a shirt: a rough figure will do.',
    asked: 10,
  },
  inkPrice: {
    group: 'ink',
    label: 'Ink',
    units: ['money/mL'],
    typical: 0.2,
    plausible: [0.05, 3],
    changes: 'Bottle ink is far below cartridge ink; ink is still only a percent or two of a shirt.',
    asked: 5,
  },
  laydown: {
    group: 'ink',
    label: 'Ink laid down where one channel covers fully',
    units: ['mL/in2', 'mL/m2'],
    typical: 0.0065,
    plausible: [0.002, 0.02],
    changes: 'Scales the ink of every print. Your own refills will measure it.',
  },
  inkLoss: {
    group: 'ink',
    label: 'Ink lost while printing',
    units: ['share'],
    typical: 0.1,
    plausible: [0, 0.4],
    changes: 'Spitting and overspray on top of what lands in the print.',
  },
  sessionInk: {
    group: 'ink',
    label: 'Ink lost to cleaning in a session',
    units: ['mL'],
    typical: 4,
    plausible: [0, 60],
    changes: 'Nozzle check and cleaning, once each session: small batches feel it.',
  },
  sheetReject: {
    group: 'spoilage',
    label: 'Printed sheets rejected before pressing',
    units: ['share'],
    typical: 0.02,
    plausible: [0, 0.3],
    changes: 'More sheets, ink and minutes for the same good pieces.',
  },
  reprintShare: {
    group: 'spoilage',
    label: 'Allowance for free reprints',
    units: ['share'],
    typical: 0.02,
    plausible: [0, 0.1],
    changes: 'Set aside from each job for the pieces you will one day make again for nothing.',
  },
  enquiryMinutes: minutesOf('Enquiry, quote and messages', 40, 'Once an order, whatever its size.', 6),
  proofMinutes: minutesOf('Proof and one revision', 15, 'Once an order.'),
  setUpMinutes: minutesOf(
    'Setting up for a session',
    25,
    'Once a session: warm-up, nozzle check, laying out.',
    7,
  ),
  cleanDownMinutes: minutesOf('Cleaning down after a session', 10, 'Once a session.'),
  packMinutes: minutesOf('Packing the order, note and invoice', 12, 'Once an order.'),
  deliverMinutes: minutesOf('Delivering or posting', 30, 'Once an order that you bring or post.'),
  sheetMinutes: minutesOf('Feeding, watching and trimming a sheet', 1, 'Every printed sheet.', 8),
  packagingPerOrder: {
    group: 'packing',
    label: 'Carton, tape and note for an order',
    units: ['money/order'],
    typical: 3,
    plausible: [0, 40],
    changes: 'Once an order.',
  },
  travelRate: {
    group: 'packing',
    label: 'Driving',
    units: ['money/mi', 'money/km'],
    typical: 0.6,
    plausible: [0.05, 3],
    changes: 'Each mile or kilometre of a delivery, there and back.',
  },
  targetMargin: {
    group: 'price',
    label: 'Margin you aim for, after your own pay',
    units: ['share'],
    typical: 0.3,
    plausible: [0.05, 0.8],
    changes: 'The target price is set so that this share of it is profit.',
    asked: 12,
  },
} as const satisfies Record<string, RateDefinition>;

export type RateName = keyof typeof rateCatalogue;

/** All names of workshop rates, in catalogue order. */
export const rateNames = Object.keys(rateCatalogue) as readonly RateName[];

/** @returns the definition under its plain type. */
export const rateDefinition = (name: RateName): RateDefinition => rateCatalogue[name];

/** @returns whether a text is the name of a workshop rate. */
export const isRateName = (text: string): text is RateName => Object.hasOwn(rateCatalogue, text);
