import type { Blank } from '@/shared/schemas/blank';
import type { Job } from '@/shared/schemas/job';
import type { Consumable } from '@/shared/schemas/making/supply';
import type { StockItem } from '@/shared/schemas/stock';
import type { Workshop } from '@/shared/schemas/workshop';
import type { Pile } from './foldStock';
import { inkChannels } from './inkChannels';
import { stockKey } from './stockKey';

/** What stands together in the stockroom: the sizes of a blank, the inks of a printer, the sizes of a design. */
export interface StockGroup {
  readonly kind: StockItem['kind'];
  /** Of the blank, the printer or the line; of papers and of consumables it is their kind. */
  readonly id: string;
  /** Null where it is listed nowhere any more. */
  readonly name: string | null;
  /** The job of finished pieces; null elsewhere, and where it is gone. */
  readonly ofJob: string | null;
  readonly things: readonly {
    readonly item: StockItem;
    /** A size, a channel, a paper; null where it is listed nowhere any more. */
    readonly name: string | null;
    /** Null of pieces. */
    readonly unit: 'sheet' | 'm' | 'mL' | 'roll' | null;
  }[];
  /** Whether anything was ever noted of any of it. */
  readonly isNoted: boolean;
}

interface Stockroom {
  readonly piles: readonly Pile[];
  readonly blanks: Readonly<Record<string, Blank>>;
  readonly workshop: Pick<Workshop, 'printers' | 'sheets' | 'locale'>;
  readonly consumables: Readonly<Record<string, Consumable>>;
  readonly jobs: readonly { readonly id: string; readonly job: Job }[];
}

/**
 * Everything that can lie in stock, whether somebody counted it or not, and whatever lies there though it is listed
 * nowhere any more: blanks, paper, ink, consumables, finished pieces.
 */
export function stockroom(room: Stockroom): readonly StockGroup[] {
  const groups = new Map<string, Building>();
  for (const [id, { name, sizes }] of byName(room.blanks, room.workshop.locale)) {
    for (const size of sizes)
      add(
        groups,
        { kind: 'blank', blankId: id, size: size.name, lot: null },
        { group: name, name: size.name },
      );
  }
  for (const { id, name, form } of room.workshop.sheets)
    add(groups, { kind: 'paper', sheetId: id }, { name, unit: form === 'cut' ? 'sheet' : 'm' });
  for (const printer of room.workshop.printers) {
    for (const name of inkChannels(printer))
      add(groups, { kind: 'ink', printerId: printer.id, name }, { group: printer.name, name, unit: 'mL' });
  }
  for (const [id, { name, unit }] of byName(room.consumables, room.workshop.locale))
    add(groups, { kind: 'consumable', consumableId: id }, { name, unit: unit === 'piece' ? null : unit });
  for (const { id, job } of room.jobs) {
    if (job.archivedOn !== null) continue;
    for (const line of job.lines) {
      for (const { size } of line.quantities)
        add(
          groups,
          { kind: 'finished', jobId: id, lineId: line.id, size },
          { group: line.name, ofJob: job.name, name: size },
        );
    }
  }
  for (const pile of room.piles) noted(groups, pile, room);
  return order.flatMap((kind) =>
    [...groups.values()]
      .filter((group) => group.kind === kind)
      .map(({ things, ...group }) => ({ ...group, things: [...things.values()] })),
  );
}

// Helpers

const order = ['blank', 'paper', 'ink', 'consumable', 'finished'] as const;

interface Building extends Omit<StockGroup, 'things'> {
  readonly things: Map<string, StockGroup['things'][number]>;
  isNoted: boolean;
}

interface Called {
  readonly group?: string | null;
  readonly ofJob?: string | null;
  readonly name: string | null;
  readonly unit?: StockGroup['things'][number]['unit'];
}

const byName = <Of extends { readonly name: string }>(all: Readonly<Record<string, Of>>, locale: string) =>
  Object.entries(all).toSorted(([, one], [, other]) => one.name.localeCompare(other.name, locale));

function idOf(item: StockItem): string {
  switch (item.kind) {
    case 'blank':
      return item.blankId;
    case 'ink':
      return item.printerId;
    case 'finished':
      return `${item.jobId}-${item.lineId}`;
    case 'paper':
    case 'consumable':
      return item.kind;
    default:
      return item satisfies never;
  }
}

function add(groups: Map<string, Building>, item: StockItem, called: Called): Building {
  const id = idOf(item);
  const key = `${item.kind} ${id}`;
  const group = groups.get(key) ?? {
    ...{ kind: item.kind, id, name: called.group ?? null, ofJob: called.ofJob ?? null },
    ...{ things: new Map(), isNoted: false },
  };
  groups.set(key, group);
  const own = stockKey(item);
  if (!group.things.has(own))
    group.things.set(own, { item, name: called.name, unit: called.unit ?? unitOf(item) });
  return group;
}

/** Of what is listed nowhere any more, as far as its kind says it. */
const unitOf = ({ kind }: StockItem) => (kind === 'ink' ? 'mL' : kind === 'paper' ? 'sheet' : null);

function noted(groups: Map<string, Building>, { item, quantity }: Pile, { jobs }: Stockroom): void {
  const isListed = groups.get(`${item.kind} ${idOf(item)}`)?.things.has(stockKey(item)) === true;
  // Of none that is listed nowhere there is nothing to tell.
  if (!isListed && quantity === 0) return;
  const job = item.kind === 'finished' ? jobs.find(({ id }) => id === item.jobId)?.job : undefined;
  const line = job?.lines.find(({ id }) => item.kind === 'finished' && id === item.lineId);
  const name = 'size' in item ? item.size : item.kind === 'ink' ? item.name : null;
  add(groups, item, { group: line?.name ?? null, ofJob: job?.name ?? null, name }).isNoted = true;
}
