import type { Entry } from '@/shared/schemas/happened';
import type { Job } from '@/shared/schemas/job';
import type { Pressing, SheetsPrinted } from '@/shared/schemas/making/runEvents';
import type { Rate } from '@/shared/schemas/rate';
import type { Press, Printer } from '@/shared/schemas/workshop';
import type { HoursNoted } from './hourRows';
import { type DaySpan, isWithin } from './yearSpan';

/** What a machine lost of its worth in a year. */
interface MachineWear {
  readonly id: string;
  readonly name: string;
  /** Presses or sheets noted. */
  readonly uses: number;
  readonly counted: 'presses' | 'sheets';
  /** Currency units, unrounded; null where its price is not known, or neither its use nor its years are. */
  readonly wear: number | null;
  /** By what it made, or by its age where that takes more. */
  readonly by: 'use' | 'age' | null;
}

export interface WearNoted {
  readonly presses: readonly Press[];
  readonly printers: readonly Printer[];
  readonly pressings: readonly Entry<'pressing', Pressing>[];
  readonly sheetsPrinted: readonly Entry<'sheetsPrinted', SheetsPrinted>[];
  readonly standards: HoursNoted['standards'];
  readonly jobOf: (jobId: string) => Job | null;
  /** The maker's calendar day of a moment. */
  readonly dayOf: (at: number) => string;
}

/** Uses nobody could give to a machine. */
interface YearWear {
  readonly machines: readonly MachineWear[];
  readonly unplaced: { readonly presses: number; readonly sheets: number };
}

/**
 * Price less resale over the presses or sheets of a life, or over its years where they take more: a machine ages whether
 * it is used or not. Spare parts are bought, so they are expenses and no wear.
 *
 * @param yearShare how much of the year has passed, 0 to 1
 */
export function machineWear(noted: WearNoted, span: DaySpan, yearShare: number): YearWear {
  const presses = usesOf(
    noted.pressings,
    {
      machineOf: (one) => pressOf(one, noted),
      usesIn: () => 1,
      // One whose cause was named later was lifted before.
      momentOf: ({ at, body }) => body.pressedAt ?? at,
    },
    noted,
    span,
  );
  const sheets = usesOf(
    noted.sheetsPrinted,
    {
      machineOf: ({ body }) => noted.jobOf(body.jobId)?.printerId ?? null,
      usesIn: ({ body }) => body.good + body.rejected,
      momentOf: ({ at }) => at,
    },
    noted,
    span,
  );
  const pressed = noted.presses.map((press) =>
    wearOf(press, { life: press.lifePresses, uses: presses, counted: 'presses', yearShare }),
  );
  const printed = noted.printers.map((printer) =>
    wearOf(printer, { life: printer.lifeSheets, uses: sheets, counted: 'sheets', yearShare }),
  );
  return {
    machines: [...pressed, ...printed],
    unplaced: { presses: strayUses(presses, noted.presses), sheets: strayUses(sheets, noted.printers) },
  };
}

// Helpers

/** Uses by the id of a machine; under '' those of which nobody knows the machine. */
type Uses = ReadonlyMap<string, number>;

function usesOf<One extends Entry>(
  all: readonly One[],
  told: {
    readonly machineOf: (one: One) => string | null;
    readonly usesIn: (one: One) => number;
    /** Ms since 1970. */
    readonly momentOf: (one: One) => number;
  },
  { dayOf }: WearNoted,
  span: DaySpan,
): Uses {
  const uses = new Map<string, number>();
  for (const one of all) {
    if (!isWithin(span, dayOf(told.momentOf(one)))) continue;
    const machine = told.machineOf(one) ?? '';
    uses.set(machine, (uses.get(machine) ?? 0) + told.usesIn(one));
  }
  return uses;
}

/** By the standard the run began by, else by the job as it is. */
function pressOf({ body }: WearNoted['pressings'][number], { standards, jobOf }: WearNoted): string | null {
  const standard = standards.find(({ id }) => id === body.standardId);
  const planned = (standard?.body.works ?? [])
    .filter(({ jobId }) => jobId === body.jobId)
    .flatMap(({ lines }) => lines.flatMap(({ placements }) => placements))
    .find(({ placementId }) => placementId === body.placementId);
  if (planned !== undefined) return planned.pressId;
  const placements = jobOf(body.jobId)?.lines.flatMap((line) => line.placements) ?? [];
  return placements.find(({ id }) => id === body.placementId)?.pressId ?? null;
}

interface WearAsked {
  readonly life: Rate | null;
  readonly uses: Uses;
  readonly counted: MachineWear['counted'];
  readonly yearShare: number;
}

type Machine = Pick<Press, 'id' | 'name' | 'price' | 'resale' | 'lifeYears'>;

function wearOf({ id, name, price, resale, lifeYears }: Machine, asked: WearAsked): MachineWear {
  const { life, counted, yearShare } = asked;
  const uses = asked.uses.get(id) ?? 0;
  const named = { id, name, uses, counted };
  // Where nobody notes presses and sheets it cannot be told from one that stood still.
  const isUseKnown = life !== null && uses > 0;
  if (price === null || !(isUseKnown || lifeYears !== null)) return { ...named, wear: null, by: null };
  const lost = Math.max(0, price.value - (resale?.value ?? 0));
  const byUse = life === null ? 0 : (lost * uses) / life.value;
  const byAge = lifeYears === null || lifeYears.value <= 0 ? 0 : (lost / lifeYears.value) * yearShare;
  return byAge > byUse ? { ...named, wear: byAge, by: 'age' } : { ...named, wear: byUse, by: 'use' };
}

const strayUses = (uses: Uses, machines: readonly { readonly id: string }[]): number =>
  [...uses].reduce((sum, [id, count]) => (machines.some((one) => one.id === id) ? sum : sum + count), 0);
