import type { FixFacts } from '@/shared/facts/fixFacts';
import type { Fix } from '@/shared/finding';
import type { Speaker } from './speaker';
import { pressureWords } from './words';

/** Words of every button; a rule names its button by one of these keys. */
export const fixLabels: {
  readonly [Label in keyof FixFacts]: (facts: FixFacts[Label], speak: Speaker) => string;
} = {
  useTypical: (facts, speak) => `Use the typical ${speak.rate(facts.typical, facts.unit)}`,
  useOnly: (facts) => `Use “${facts.name}”`,
  printForAll: (facts, speak) =>
    `Use the print of ${speak.size(facts.widthMm, facts.heightMm)} for all other sizes`,
  resizePrint: (facts, speak) => `Print at ${speak.size(facts.widthMm, facts.heightMm)}`,
  smallerForSizes: (facts, speak) =>
    `Print at ${speak.size(facts.widthMm, facts.heightMm)} on ${facts.sizes}`,
  setTemperature: (facts, speak) => `Set ${speak.temperature(facts.temperatureC)}`,
  planRelief: () => 'Plan a press pillow',
  boxIsMeant: () => 'The box is meant so',
  whiteIsCloth: () => 'Bare cloth is right there',
  mirrorOn: () => 'Print it mirrored',
  mirrorOff: () => 'Print it as it is',
  markApproved: (facts) =>
    facts.count === 1 ? 'The customer has approved it' : 'The customer has approved them',
  setGutter: (facts, speak) => `Leave ${speak.length(facts.gutterMm)} between pieces`,
  printsApart: () => 'Lay each print out by itself',
  isTransferPaper: () => 'It is transfer paper',
  planBarrier: () => 'Plan clean paper inside and under',
  setDwell: (facts, speak) => `Press for ${speak.number(facts.seconds, 0)} s`,
  setPressure: (facts) => `Set ${pressureWords(facts.pressure)} pressure`,
  switchScale: (facts, speak) => `It is ${speak.number(facts.typed, 1)} °${facts.meant}`,
  addPreheat: (facts, speak) => `Preheat for ${speak.number(facts.seconds, 0)} s`,
  useFreshPaper: () => 'Plan fresh plain paper',
  dropCharge: (facts) => `Take the up-charge for ${facts.size} out`,
  sortBreaks: (facts) => `Put them as ${facts.rising}`,
  setPrice: (facts, speak) => `Make it ${speak.money(facts.price)}`,
  setEnding: (facts, speak) => `End prices on ${speak.money(facts.coin)}`,
  orderIsSum: (facts, speak) => `The order is for ${speak.number(facts.total)}`,
  setQuantity: (facts, speak) => `Make it ${speak.number(facts.quantity, 0)}`,
  divideByPack: (facts, speak) =>
    `Divide by ${speak.number(facts.pieces, 0)}: ${speak.rate(facts.value, facts.unit)}`,
  confirmToday: (facts, speak) =>
    facts.count === 1 ? 'It still holds today' : `All ${speak.number(facts.count, 0)} still hold today`,
  wearByUse: () => 'It is out of the overhead',
  othersElsewhere: (facts, speak) => `The other ${speak.number(facts.others, 0)} W go on another circuit`,
  noFoodOven: () => 'No food oven is used',
  ventilate: () => 'The room is ventilated',
  keepLabel: () => 'The label stays',
  reorderPresses: (facts) => `Press ${facts.first} first`,
  moveDate: (facts, speak) => `Agree on ${speak.day(facts.date)}`,
};

/** @returns the words on the button of a fix. */
export const fixLabel = ({ label, facts }: Fix, speak: Speaker): string => labelOf(label, facts, speak);

const labelOf = <Label extends keyof FixFacts>(
  label: Label,
  facts: FixFacts[Label],
  speak: Speaker,
): string => fixLabels[label](facts, speak);
