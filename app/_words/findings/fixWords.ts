import type { Speaker } from '@/app/_words/formatter';
import { pressureWords } from '@/app/_words/materialWords';
import type { Fix } from '@/shared/finding';
import { factReaders } from './factReaders';

/** Words of every button; a rule names its button by one of these keys. */
export const fixLabels = {
  useTypical: ({ figure, name, speak }) => `Use the typical ${speak.rate(figure('typical'), name('unit'))}`,
  useOnly: ({ name }) => `Use “${name('name')}”`,
  printForAll: ({ figure, speak }) =>
    `Use the print of ${speak.size(figure('widthMm'), figure('heightMm'))} for all other sizes`,
  resizePrint: ({ figure, speak }) => `Print at ${speak.size(figure('widthMm'), figure('heightMm'))}`,
  smallerForSizes: ({ figure, name, speak }) =>
    `Print at ${speak.size(figure('widthMm'), figure('heightMm'))} on ${name('sizes')}`,
  setTemperature: ({ figure, speak }) => `Set ${speak.temperature(figure('temperatureC'))}`,
  planRelief: () => 'Plan a press pillow',
  boxIsMeant: () => 'The box is meant so',
  whiteIsCloth: () => 'Bare cloth is right there',
  mirrorOn: () => 'Print it mirrored',
  mirrorOff: () => 'Print it as it is',
  markApproved: ({ figure }) =>
    figure('count') === 1 ? 'The customer has approved it' : 'The customer has approved them',
  setGutter: ({ figure, speak }) => `Leave ${speak.length(figure('gutterMm'))} between pieces`,
  printsApart: () => 'Lay each print out by itself',
  isTransferPaper: () => 'It is transfer paper',
  planBarrier: () => 'Plan clean paper inside and under',
  setDwell: ({ figure, speak }) => `Press for ${speak.number(figure('seconds'), 0)} s`,
  setPressure: ({ name }) => `Set ${pressureWords(name('pressure'))} pressure`,
  switchScale: ({ figure, name, speak }) => `It is ${speak.number(figure('typed'), 1)} °${name('meant')}`,
  addPreheat: ({ figure, speak }) => `Preheat for ${speak.number(figure('seconds'), 0)} s`,
  useFreshPaper: () => 'Plan fresh plain paper',
  dropCharge: ({ name }) => `Take the up-charge for ${name('size')} out`,
  sortBreaks: ({ name }) => `Put them as ${name('rising')}`,
  setPrice: ({ figure, speak }) => `Make it ${speak.money(figure('price'))}`,
  setEnding: ({ figure, speak }) => `End prices on ${speak.money(figure('coin'))}`,
  orderIsSum: ({ figure, speak }) => `The order is for ${speak.number(figure('total'))}`,
  setQuantity: ({ figure, speak }) => `Make it ${speak.number(figure('quantity'), 0)}`,
  divideByPack: ({ figure, name, speak }) =>
    `Divide by ${speak.number(figure('pieces'), 0)}: ${speak.rate(figure('value'), name('unit'))}`,
  confirmToday: ({ figure, speak }) =>
    figure('count') === 1
      ? 'It still holds today'
      : `All ${speak.number(figure('count'), 0)} still hold today`,
  wearByUse: () => 'It is out of the overhead',
  othersElsewhere: ({ figure, speak }) =>
    `The other ${speak.number(figure('others'), 0)} W go on another circuit`,
  noFoodOven: () => 'No food oven is used',
  ventilate: () => 'The room is ventilated',
  keepLabel: () => 'The label stays',
  reorderPresses: ({ name }) => `Press ${name('first')} first`,
  moveDate: ({ name, speak }) => `Agree on ${speak.day(name('date'))}`,
} satisfies Record<string, (told: ToldFix) => string>;

interface ToldFix {
  readonly speak: Speaker;
  readonly name: (fact: string) => string;
  readonly figure: (fact: string) => number;
}

/** @returns the words on the button of a fix. */
export function fixLabel({ label, facts }: Fix, speak: Speaker): string {
  const words = Object.entries(fixLabels).find(([key]) => key === label)?.[1];
  if (words === undefined) throw new UnknownFix(label);
  return words({ speak, ...factReaders(facts) });
}

/** A button without words is a fault of the rule that made it. */
export class UnknownFix extends Error {
  override readonly name = 'UnknownFix';
  constructor(label: string) {
    super(`the button “${label}” has no words`);
  }
}
