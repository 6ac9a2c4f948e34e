import { severalBegan } from './severalBegan';

/** The sections of a run, each by the id of its element. */
export const runSections = [
  { id: 'made', name: 'What is made' },
  { id: 'when', name: 'When' },
  { id: 'pace', name: 'Pace' },
  { id: 'checks', name: 'Checks' },
  { id: 'goods', name: 'Stock and buying' },
  { id: 'paper', name: 'Run sheet' },
] as const;

/** The sections of a run that was begun. */
export const begunSections = [
  { id: 'frozen', name: 'What is made' },
  { id: 'frozen-clock', name: 'When' },
  { id: 'paper', name: 'Run sheet' },
] as const;

export type BegunSectionId = (typeof begunSections)[number]['id'];
export type RunSectionId = (typeof runSections)[number]['id'];

export const runTable = {
  plate: 'The run in short',
  waits: 'Working out the clock…',
  noClock: 'No clock yet.',
  old: 'These are the figures before what is asked below.',
  name: 'Name of the run',
  // State
  toBegin: 'Not begun.',
  begun: (day: string) => `Begun ${day}.`,
  isClosed: 'Closed.',
  press: 'To the press',
  after: 'What came of it',
  begin: 'Begin',
  beginAnew: 'Begin again by these figures',
  beginning: 'It is being begun.',
  notBegun: (why: string) => `It is not begun. ${why}`,
  beginTold:
    'Begin freezes what the run is held against: its costs, recipes, spares and clock. No stock moves and no order changes.',
  beginWaits: 'The clock comes first.',
  beginOld: 'The clock is being worked out anew.',
  several: severalBegan,
  carry: 'Take it to another device',
  putAway: 'Put away',
  bringBack: 'Bring back',
  isPutAway: 'Put away.',
  remove: 'Remove the run',
  removed: (name: string) => `${name} removed`,
  // What is made
  made: 'What is made',
  madeNow: 'What is made, as planned now',
  works: 'Jobs',
  noSums: 'No figures now: its jobs are not here, or have no sums.',
  someOf: (known: string, jobs: number) =>
    `${known} of its ${jobs} jobs; the others are not here, or have no sums`,
  worksFold: 'Jobs of this run',
  add: 'Add a job',
  addChoice: 'Job to add',
  takeOut: 'Take out',
  takeOutOf: (name: string) => `Take out ${name}`,
  forOrder: (name: string) => `for ${name}`,
  cover: 'How sure every size is to come out whole',
  coverTold: 'Spares of one size do not help another. Blanks that stay clean go back to stock.',
  take: (all: string, spares: string) => `${all} laid out, ${spares}`,
  sizesFold: 'Order of the sizes',
  sizesTold:
    'Common sizes first while the press settles, scarce ones once it runs steadily. Your order comes before that.',
  earlier: 'Earlier',
  later: 'Later',
  move: (size: string, to: string) => `Press ${size} ${to}`,
  followRule: 'Follow the rule again',
  // When
  when: 'When',
  whenNow: 'When, as planned now',
  clock: 'The clock',
  clockHead: { what: 'What', from: 'From', to: 'To', takes: 'Takes' },
  startsOn: 'Not before',
  startsHint: 'Empty begins as soon as the bench is free.',
  blocksFold: 'Blocks of its own',
  blocksTold: 'Times at the bench for this run alone, in the place of your week.',
  endsAsItBegins: 'It ends when it begins.',
  weekTold: 'It follows the free hours of your workshop.',
  addBlock: 'Add a block',
  removeBlock: 'Remove',
  removeBlockOf: (day: string) => `Remove the block on ${day}`,
  followWeek: 'Follow the week again',
  day: 'Day',
  from: 'From',
  to: 'To',
  waitsFold: 'Drying and cooling',
  dry: 'Left to dry before pressing',
  dryEmpty: 'Not planned: sheets are pressed as soon as they are printed.',
  cool: 'Left to cool before packing',
  coolEmpty: 'Not planned: pieces are packed as they come.',
  sealed: 'Do printed sheets lie sealed until they are pressed?',
  acceptHeatings: (heatings: string) => `Accept ${heatings}`,
  asPriced: 'Back to what the jobs are priced for',
  // Pace
  pace: 'Pace',
  preTaped: 'Transfers are taped at the bench before',
  preTapedHint: 'Less is done at the press; the taping is done beforehand.',
  // Checks
  checks: 'Checks',
  none: 'Nothing stops it.',
  // Goods
  goods: 'Stock and buying',
  enough: 'Enough blanks at home.',
  notCounted: 'nobody counted',
  buy: 'Buying list for this run',
  toList: 'To its buying list',
  goodsTable: 'Blanks',
  goodsHead: { size: 'Size', take: 'To lay out', home: 'At home', short: 'Short' },
  brought: 'The customer brings them.',
  goodsTold: 'Paper, ink, tape and freight stand on the buying list.',
  // Begun
  begunWaits: 'What was pressed is being counted…',
  allPressed: 'All is pressed',
  goodOf: (good: string, wanted: string) => `${good} of ${wanted} good`,
  doneAbout: (time: string) => `this print done about ${time}`,
  profit: (amount: string) => `${amount} profit`,
  profitOf: (amount: string) => `, ${amount} as quoted`,
  noPrice: 'no price was asked, so there is no profit to tell',
  noPiece: 'no piece is noted',
  goodLost: (good: string, lost: string) => `${good} good, ${lost} lost`,
  plannedFor: (day: string, isDone: boolean) => (isDone ? `Was to be done on ${day}` : `Done on ${day}`),
  frozenTable: 'Pieces by size as the run began',
  frozenHead: { size: 'Size', wanted: 'Wanted', take: 'Laid out', good: 'Good', left: 'Spares left' },
  sharedTold:
    'Spares are of the blank and its size, whichever design is pressed on it: each stands beside every design that may take it.',
  frozenTold: 'As it was frozen when the run began; what changes in the job now changes nothing here.',
  reached: {
    printed: 'its sheets are printed.',
    pressed: 'all its pieces are pressed.',
    packed: 'the run is closed; are its pieces packed?',
  },
  note: (step: string) => `Note “${step}”`,
  noteOf: (step: string, order: string) => `Note “${step}” of ${order}`,
  nowFold: 'The plan as it would be now',
  nowLine: 'for the next run; this one goes by what was frozen',
  // Paper
  paper: 'Run sheet',
  paperAnswer: 'The sheet to tick off at the press',
  paperFold: 'Look at it and print it',
  page: 'Printed on',
  noPaper: 'There is no run sheet before the clock stands.',
  noPaperNow:
    'No sheet can be drawn: its jobs are not here, or have no sums now. The press goes by what was frozen.',
} as const;
