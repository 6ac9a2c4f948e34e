import { deviceIdSchema, deviceLetterSchema } from '@/shared/schemas/happened';
import { z } from '@/shared/schemas/z';
import type { BackendTx } from './backend';

/** Which device this is, as entries and papers name it. */
export interface Device {
  readonly id: string;
  readonly letter: string;
}

const KEY = 'device';
const LETTERS = 'ABCDEFGHJKLMNPRSTUVWXYZ';

const deviceRowSchema = z.strictObject({
  key: z.literal(KEY),
  id: deviceIdSchema,
  letter: deviceLetterSchema,
  /** The highest number given to an entry or a paper. */
  count: z.int().min(0),
});
type DeviceRow = Readonly<z.infer<typeof deviceRowSchema>>;

/** @returns the device this store belongs to; null while nothing was ever counted. */
export async function readDevice(tx: BackendTx): Promise<Device | null> {
  const row = await readRow(tx);
  return row === null ? null : { id: row.id, letter: row.letter };
}

/**
 * Takes the next numbers, inside the transaction that uses them, so that no other tab gets the same.
 *
 * @returns the first of them
 */
export async function claimCounts(
  tx: BackendTx,
  howMany: number,
): Promise<{ readonly device: Device; readonly first: number }> {
  const row = (await readRow(tx)) ?? newDevice();
  await tx.put('meta', [{ ...row, count: row.count + howMany }]);
  return { device: { id: row.id, letter: row.letter }, first: row.count + 1 };
}

// Helpers

async function readRow(tx: BackendTx): Promise<DeviceRow | null> {
  const row = deviceRowSchema.safeParse((await tx.get('meta', [KEY]))[0]);
  return row.success ? row.data : null;
}

function newDevice(): DeviceRow {
  const bytes = [...crypto.getRandomValues(new Uint8Array(13))];
  const id = bytes.slice(1).map((byte) => byte.toString(16).padStart(2, '0'));
  const letter = LETTERS[(bytes[0] ?? 0) % LETTERS.length] ?? 'A';
  return { key: KEY, id: id.join(''), letter, count: 0 };
}
