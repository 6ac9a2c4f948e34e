import type { Formatter } from '@/app/_words/formatter';
import { listed } from '@/app/_words/listed';
import type { LeftInCar } from '@/lib/stall/car/carHeld';
import { goodsKey } from '@/lib/stall/goodsKey';

export const homeWords = {
  label: 'Finished at home',
  pieces: 'Pieces',
  rule: 'What is counted here was made and paid before. Say by its button what was pressed for this day.',
  missing: 'Type what you counted first; an empty field notes nothing.',
  note: 'Note what was counted',
  /** Once for all fields, of which some or none have a number noted. */
  uncounted: (isAny: boolean): string =>
    isAny ? 'Where no number is noted, nobody counted yet.' : 'None of them is counted yet.',
} as const;

/** What is noted of some goods at home. */
export const knownWords = (pieces: number, { number }: Pick<Formatter, 'number'>): string =>
  pieces < 0
    ? `${number(-pieces, 0)} more went out than came in: count them.`
    : `${number(pieces, 0)} noted.`;

/**
 * What closed days left in the car of these goods, by day: it is planned with.
 *
 * @param goods with what they are called
 */
export function leftInCarWords(
  left: readonly LeftInCar[],
  goods: readonly {
    readonly jobId: string;
    readonly lineId: string;
    readonly size: string;
    readonly design: string;
  }[],
  { number }: Pick<Formatter, 'number'>,
): readonly string[] {
  const designs = new Map(goods.map((one) => [goodsKey(one), one.design] as const));
  const days = new Map<string, { readonly title: string; readonly named: string[] }>();
  for (const one of left) {
    const design = designs.get(goodsKey(one));
    if (design === undefined) continue;
    const day = days.get(one.stallDayId) ?? { title: one.title, named: [] };
    day.named.push(`${number(one.pieces, 0)} ${design} ${one.size}`.trim());
    days.set(one.stallDayId, day);
  }
  return [...days.values()].map(
    ({ title, named }) =>
      `In the car from ${title}, not counted: ${listed(named)}. The plan counts on them; what is not there will be short, so count them and close that day again.`,
  );
}
