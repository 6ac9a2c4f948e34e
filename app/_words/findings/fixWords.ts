import type { Formatter } from '@/app/_words/formatter';
import { pressureWords } from '@/app/_words/materialWords';
import type { FixFacts } from '@/shared/facts/fixFacts';
import type { Fix } from '@/shared/finding';

/** Words of every button; a rule names its button by one of these keys. */
export const fixLabels: {
  readonly [Label in keyof FixFacts]: (facts: FixFacts[Label], formatter: Formatter) => string;
} = {
  useTypical: (facts, formatter) => `Use the typical ${formatter.rate(facts.typical, facts.unit)}`,
  useOnly: (facts) => `Use “${facts.name}”`,
  addPress: (facts) => addPressWords[facts.kind],
  printForAll: (facts, formatter) =>
    `Use the print of ${formatter.size(facts.widthMm, facts.heightMm)} for all other sizes`,
  resizePrint: (facts, formatter) => `Print at ${formatter.size(facts.widthMm, facts.heightMm)}`,
  smallerForSizes: (facts, formatter) =>
    `Print at ${formatter.size(facts.widthMm, facts.heightMm)} on ${facts.sizes}`,
  setTemperature: (facts, formatter) => `Set ${formatter.temperature(facts.temperatureC)}`,
  planRelief: () => 'Plan a press pillow',
  boxIsMeant: () => 'The box is meant so',
  whiteIsCloth: () => 'Bare cloth is right there',
  mirrorOn: () => 'Print it mirrored',
  mirrorOff: () => 'Print it as it is',
  markApproved: (facts) =>
    facts.count === 1 ? 'The customer has approved it' : 'The customer has approved them',
  setGutter: (facts, formatter) => `Leave ${formatter.length(facts.gutterMm)} between pieces`,
  shortenPrints: (facts, formatter) => `Make prints up to ${formatter.length(facts.longestMm)} long`,
  printsApart: () => 'Lay each print out by itself',
  isTransferPaper: () => 'It is transfer paper',
  planBarrier: () => 'Plan clean paper inside and under',
  setDwell: (facts, formatter) => `Press for ${formatter.number(facts.seconds, 0)} s`,
  setPressure: (facts) => `Set ${pressureWords(facts.pressure)} pressure`,
  switchScale: (facts, formatter) => `It is ${formatter.number(facts.typed, 1)} °${facts.meant}`,
  addPreheat: (facts, formatter) => `Preheat for ${formatter.number(facts.seconds, 0)} s`,
  useFreshPaper: () => 'Plan fresh plain paper',
  dropCharge: (facts) => `Take the up-charge for ${facts.size} out`,
  sortBreaks: (facts) => `Put them as ${facts.rising}`,
  setPrice: (facts, formatter) => `Make it ${formatter.money(facts.price)}`,
  askSuggested: (facts, formatter) => `Ask ${formatter.money(facts.price)}`,
  priceAsSize: (facts, formatter) => `Take ${formatter.money(facts.price)}, as ${facts.size} costs`,
  pricesAsNear: (facts, formatter) =>
    `Take for ${formatter.count(facts.count, 'size')} what the next size costs`,
  noFreight: () => 'It comes free',
  countDelivery: (facts, formatter) => `No drive; count ${formatter.count(facts.minutes, 'minute')}`,
  inkOfPicture: () => 'Take what the picture shows',
  setAlone: (facts, formatter) => `The press works alone for ${formatter.count(facts.minutes, 'minute')}`,
  dropOwnPrices: (facts) => (facts.count === 1 ? 'Take it out' : 'Take them out'),
  pointDecimals: () => 'Write decimals with a point',
  setEnding: (facts, formatter) => `End prices on ${formatter.money(facts.coin)}`,
  orderIsSum: (facts, formatter) => `The order is for ${formatter.number(facts.total)}`,
  setQuantity: (facts, formatter) => `Make it ${formatter.number(facts.quantity, 0)}`,
  divideByPack: (facts, formatter) =>
    `Divide by ${formatter.number(facts.pieces, 0)}: ${formatter.rate(facts.value, facts.unit)}`,
  confirmToday: (facts, formatter) =>
    facts.count === 1 ? 'It still holds today' : `All ${formatter.number(facts.count, 0)} still hold today`,
  wearByUse: () => 'It is out of the overhead',
  othersElsewhere: (facts, formatter) =>
    `The other ${formatter.number(facts.others, 0)} W go on another circuit`,
  noFoodOven: () => 'No food oven is used',
  ventilate: () => 'The room is ventilated',
  keepLabel: () => 'The label stays',
  reorderPresses: (facts) => `Press ${facts.first} first`,
  performanceWay: (facts, formatter) => `Press ${formatter.number(facts.seconds, 0)} s, lightly, with a test`,
  gentleTest: () => 'Press lightly, with a test',
  freshPaperTest: () => 'Plan a test and fresh paper',
  planTest: () => 'Plan a test press',
  provenHere: () => 'This lot has been pressed well',
  faceMarked: () => 'The coated face is marked',
  dropClaim: () => 'Take the promise back',
  claimProven: () => 'I can prove it',
  setDrop: (facts, formatter) => `Begin ${formatter.length(facts.mm)} below the collar`,
  pressTogether: (facts, formatter) =>
    facts.pieces === 1 ? 'Press one at a time' : `Press ${formatter.number(facts.pieces, 0)} at a time`,
  usePress: (facts) => `Use ${facts.press}`,
  planLintRoll: () => 'Plan a lint roller',
  planTape: () => 'Tape all four edges',
  planCooling: (facts, formatter) => `Let it cool for ${formatter.number(facts.seconds, 0)} s`,
  planFan: () => 'Cool them by a fan',
  airIsRight: () => 'The air is right now',
  mixIsMeant: () => 'The sizes are right',
  isForChildren: () => 'It is for children',
  splitSessions: (facts, formatter) => `Press ${formatter.count(facts.pieces, 'piece')} a session`,
  intoWall: () => 'It is plugged into the wall',
  stayByPress: () => 'Somebody stays in the room',
  sheetsKept: () => 'The sheets are on file',
  belowRim: (facts, formatter) => `It ends ${formatter.length(facts.mm)} below the rim`,
  printOutside: () => 'It is printed outside',
  moveDate: (facts, formatter) => `Agree on ${formatter.day(facts.date)}`,
};

const addPressWords: Readonly<Record<FixFacts['addPress']['kind'], string>> = {
  flat: 'Add a flat press',
  mug: 'Add a mug press',
  tumbler: 'Add a tumbler press',
  oven: 'Add an oven',
};

/** @returns the words on the button of a fix. */
export const fixLabel = ({ label, facts }: Fix, formatter: Formatter): string =>
  labelOf(label, facts, formatter);

const labelOf = <Label extends keyof FixFacts>(
  label: Label,
  facts: FixFacts[Label],
  formatter: Formatter,
): string => fixLabels[label](facts, formatter);
