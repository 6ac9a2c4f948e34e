import type { Formatter } from '@/app/_words/formatter';
import { pressureWords } from '@/app/_words/materialWords';
import type { Fix } from '@/shared/finding';
import { factReaders } from './factReaders';

/** Words of every button; a rule names its button by one of these keys. */
export const fixLabels = {
  useTypical: ({ figure, name, formatter }) =>
    `Use the typical ${formatter.rate(figure('typical'), name('unit'))}`,
  useOnly: ({ name }) => `Use “${name('name')}”`,
  printForAll: ({ figure, formatter }) =>
    `Use the print of ${formatter.size(figure('widthMm'), figure('heightMm'))} for all other sizes`,
  resizePrint: ({ figure, formatter }) => `Print at ${formatter.size(figure('widthMm'), figure('heightMm'))}`,
  smallerForSizes: ({ figure, name, formatter }) =>
    `Print at ${formatter.size(figure('widthMm'), figure('heightMm'))} on ${name('sizes')}`,
  setTemperature: ({ figure, formatter }) => `Set ${formatter.temperature(figure('temperatureC'))}`,
  planRelief: () => 'Plan a press pillow',
  boxIsMeant: () => 'The box is meant so',
  whiteIsCloth: () => 'Bare cloth is right there',
  mirrorOn: () => 'Print it mirrored',
  mirrorOff: () => 'Print it as it is',
  markApproved: ({ figure }) =>
    figure('count') === 1 ? 'The customer has approved it' : 'The customer has approved them',
  setGutter: ({ figure, formatter }) => `Leave ${formatter.length(figure('gutterMm'))} between pieces`,
  printsApart: () => 'Lay each print out by itself',
  isTransferPaper: () => 'It is transfer paper',
  planBarrier: () => 'Plan clean paper inside and under',
  setDwell: ({ figure, formatter }) => `Press for ${formatter.number(figure('seconds'), 0)} s`,
  setPressure: ({ name }) => `Set ${pressureWords(name('pressure'))} pressure`,
  switchScale: ({ figure, name, formatter }) =>
    `It is ${formatter.number(figure('typed'), 1)} °${name('meant')}`,
  addPreheat: ({ figure, formatter }) => `Preheat for ${formatter.number(figure('seconds'), 0)} s`,
  useFreshPaper: () => 'Plan fresh plain paper',
  dropCharge: ({ name }) => `Take the up-charge for ${name('size')} out`,
  sortBreaks: ({ name }) => `Put them as ${name('rising')}`,
  setPrice: ({ figure, formatter }) => `Make it ${formatter.money(figure('price'))}`,
  setEnding: ({ figure, formatter }) => `End prices on ${formatter.money(figure('coin'))}`,
  orderIsSum: ({ figure, formatter }) => `The order is for ${formatter.number(figure('total'))}`,
  setQuantity: ({ figure, formatter }) => `Make it ${formatter.number(figure('quantity'), 0)}`,
  divideByPack: ({ figure, name, formatter }) =>
    `Divide by ${formatter.number(figure('pieces'), 0)}: ${formatter.rate(figure('value'), name('unit'))}`,
  confirmToday: ({ figure, formatter }) =>
    figure('count') === 1
      ? 'It still holds today'
      : `All ${formatter.number(figure('count'), 0)} still hold today`,
  wearByUse: () => 'It is out of the overhead',
  othersElsewhere: ({ figure, formatter }) =>
    `The other ${formatter.number(figure('others'), 0)} W go on another circuit`,
  noFoodOven: () => 'No food oven is used',
  ventilate: () => 'The room is ventilated',
  keepLabel: () => 'The label stays',
  reorderPresses: ({ name }) => `Press ${name('first')} first`,
  moveDate: ({ name, formatter }) => `Agree on ${formatter.day(name('date'))}`,
} satisfies Record<string, (told: ToldFix) => string>;

interface ToldFix {
  readonly formatter: Formatter;
  readonly name: (fact: string) => string;
  readonly figure: (fact: string) => number;
}

/** @returns the words on the button of a fix. */
export function fixLabel({ label, facts }: Fix, formatter: Formatter): string {
  const words = Object.entries(fixLabels).find(([key]) => key === label)?.[1];
  if (words === undefined) throw new UnknownFix(label);
  return words({ formatter, ...factReaders(facts) });
}

/** A button without words is a fault of the rule that made it. */
export class UnknownFix extends Error {
  override readonly name = 'UnknownFix';
  constructor(label: string) {
    super(`the button “${label}” has no words`);
  }
}
