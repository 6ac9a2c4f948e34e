import type { Blank } from '@/shared/schemas/blank';
import type { Consumable, SupplyItem } from '@/shared/schemas/making/supply';
import type { Workshop } from '@/shared/schemas/workshop';

/** Where the names of what is bought stand. */
interface ItemContext {
  readonly workshop: Pick<Workshop, 'sheets' | 'printers'>;
  readonly blanks: Readonly<Record<string, Blank>>;
  readonly consumables: Readonly<Record<string, Consumable>>;
}

/** A thing that is bought, in the words that stand for it. */
interface ItemWords {
  readonly name: string;
  /** Empty where it has none. */
  readonly size: string;
  readonly unit: Consumable['unit'];
}

/** @returns what a thing is called, its size apart, and what it is counted in. */
export function itemWords(item: SupplyItem, { workshop, blanks, consumables }: ItemContext): ItemWords {
  switch (item.kind) {
    case 'blank':
      return {
        name: blanks[item.blankId]?.name ?? 'A blank that is not here any more',
        size: item.size,
        unit: 'piece',
      };
    case 'paper': {
      const sheet = workshop.sheets.find(({ id }) => id === item.sheetId);
      return {
        name: sheet?.name ?? 'A paper that is not here any more',
        size: '',
        unit: sheet?.form === 'roll' ? 'm' : 'sheet',
      };
    }
    case 'ink': {
      const printer = workshop.printers.find(({ id }) => id === item.printerId);
      return { name: `Ink, ${item.name}, ${printer?.name ?? 'another printer'}`, size: '', unit: 'mL' };
    }
    case 'consumable': {
      const consumable = consumables[item.consumableId];
      return {
        name: consumable?.name ?? 'A consumable that is not here any more',
        size: '',
        unit: consumable?.unit ?? 'piece',
      };
    }
    default:
      return item satisfies never;
  }
}

/** @example 'Club shirt, L'; a mug of one size that its name tells, is not called by it twice */
export function itemName(item: SupplyItem, context: ItemContext): string {
  const { name, size } = itemWords(item, context);
  const said = sizeSaid(name, size);
  return said === '' ? name : `${name}, ${said}`;
}

/** @returns the size that is said after a name; empty where the name ends in it as a word of its own */
export const sizeSaid = (name: string, size: string): string =>
  name === size || name.endsWith(` ${size}`) ? '' : size;

const units: Readonly<Record<Consumable['unit'], readonly [string, string]>> = {
  piece: ['piece', 'pieces'],
  sheet: ['sheet', 'sheets'],
  m: ['m', 'm'],
  roll: ['roll', 'rolls'],
  mL: ['mL', 'mL'],
};

/** @returns the word after a quantity: 1 sheet, 48 sheets, 3 m. */
export const unitOf = (unit: Consumable['unit'], quantity: number): string =>
  units[unit][quantity === 1 ? 0 : 1];
