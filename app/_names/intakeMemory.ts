import { tabMemory } from '@/app/_tab/browserMemory';
import type { NamesTable } from '@/lib/names/namesTable';
import { z } from '@/shared/schemas/z';

/** Names that were read and are looked at, with what was mended and chosen. */
export interface IntakeLook {
  readonly table: NamesTable;
  /** Lines the maker leaves out. */
  readonly leftOut: readonly number[];
  /** Whether they join the names here, not take their place. */
  readonly isAdded: boolean;
  readonly withCounts: boolean;
  readonly isPrinted: boolean;
}

/** What is being taken in for one line of an order. */
interface Intake {
  /** As it was typed or pasted. */
  readonly text: string;
  readonly look: IntakeLook | null;
}

export const untouched: Intake = { text: '', look: null };

/** What is being taken in, kept in this tab until it is in the order or given up: a reload loses no mended row. */
export const intakeMemory = {
  /** @param place the order, the job and its line */
  recall: (place: string): Intake => intakeSchema.safeParse(tabMemory.recall(KEY + place)).data ?? untouched,
  /** Whether something is being taken in for an order, so that its part stands open. */
  holdsFor: (orderId: string): boolean => keysOf(orderId).length > 0,
  /** Forgets what is being taken in for orders, whatever line of theirs it is for. */
  forgetOrders(orderIds: readonly string[]): void {
    for (const key of orderIds.flatMap(keysOf)) tabMemory.remember(key, null);
  },
  /** @returns whether a reload would find it again; what was kept before stays where not, and the maker is told */
  remember: (place: string, intake: Intake): boolean =>
    tabMemory.remember(KEY + place, intake.text === '' && intake.look === null ? null : intake),
};

// Helpers

const KEY = 'pressminute-names ';

const keysOf = (orderId: string): readonly string[] => tabMemory.keysOf(`${KEY}${orderId} `);

const intakeSchema = z.strictObject({
  text: z.string(),
  look: z
    .strictObject({
      table: z.strictObject({
        rows: z.array(z.strictObject({ line: z.int(), cells: z.array(z.string()) })),
        columns: z.array(z.enum(['name', 'size', 'number', 'pieces', 'nothing'])),
        hasHead: z.boolean(),
        openQuotes: z.array(z.int()),
        isMessage: z.boolean(),
      }),
      leftOut: z.array(z.int()),
      isAdded: z.boolean(),
      withCounts: z.boolean(),
      isPrinted: z.boolean(),
    })
    .nullable(),
});
