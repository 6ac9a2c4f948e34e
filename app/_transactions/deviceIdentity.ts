import type { BackendTx } from '@/app/_backend/backend';
import { isPlainObject } from '@/lib/merging/sameValue';
import { deviceIdSchema, deviceLetterSchema } from '@/shared/schemas/happened';
import { z } from '@/shared/schemas/z';

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
  const row = (await readRow(tx)) ?? newDevice(await lettersMet(tx, null));
  await tx.put('meta', [{ ...row, count: row.count + howMany }]);
  return { device: { id: row.id, letter: row.letter }, first: row.count + 1 };
}

/**
 * Sees to it that papers numbered here from now on bear a letter that none of these has, nor any other device of which
 * a paper is here.
 *
 * @param taken letters of other devices, as they are met
 */
export async function avoidLetters(tx: BackendTx, taken: readonly string[]): Promise<void> {
  if (taken.length === 0) return;
  const row = await readRow(tx);
  const others = [...taken, ...(await lettersMet(tx, row?.id ?? null))];
  if (row === null) await tx.put('meta', [newDevice(others)]);
  else if (taken.includes(row.letter))
    await tx.put('meta', [{ ...row, letter: drawnLetter(others, row.letter) }]);
}

/** Of an entry or a paper, what tells where it was numbered. */
interface Numbered {
  readonly device: string;
  readonly count: number;
}

/**
 * A browser profile that was copied goes on counting in two places under one id. What the other wrote tells: it bears
 * our own id, and a number that was never given here or one under which something else stands. From then on this
 * device numbers under another id and letter.
 *
 * @param came entries and papers that came from elsewhere
 * @param clashing those of them that find something else under their id
 * @returns whether it did
 */
export async function partFromTwin(
  tx: BackendTx,
  came: readonly Numbered[],
  clashing: readonly Numbered[],
): Promise<boolean> {
  const row = await readRow(tx);
  if (row === null) return false;
  const isOfTwin =
    clashing.some(({ device }) => device === row.id) ||
    came.some(({ device, count }) => device === row.id && count > row.count);
  if (!isOfTwin) return false;
  await tx.put('meta', [newDevice([row.letter, ...(await lettersMet(tx, null))])]);
  return true;
}

/** @returns the letter in the number of a paper, or in that of an order's entry, whatever else is in it. */
export function letterOf(row: { readonly number?: unknown; readonly body?: unknown }): readonly string[] {
  const step = isPlainObject(row.body) ? row.body.step : undefined;
  const number = row.number ?? (isPlainObject(step) ? step.number : undefined);
  const letter = isPlainObject(number) ? number.letter : undefined;
  return typeof letter === 'string' ? [letter] : [];
}

/** @returns an id that nobody else draws. */
export function drawnId(): string {
  const bytes = [...crypto.getRandomValues(new Uint8Array(12))];
  return bytes.map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

// Helpers

async function readRow(tx: BackendTx): Promise<DeviceRow | null> {
  const row = deviceRowSchema.safeParse((await tx.get('meta', [KEY]))[0]);
  return row.success ? row.data : null;
}

const newDevice = (taken: readonly string[]): DeviceRow => ({
  key: KEY,
  id: drawnId(),
  letter: drawnLetter(taken),
  count: 0,
});

/** @returns a letter that is not taken; where all are, the one told. */
function drawnLetter(taken: readonly string[], otherwise = 'A'): string {
  const free = [...LETTERS].filter((letter) => !taken.includes(letter));
  return free[drawn(free.length)] ?? otherwise;
}

/** @returns the letters of papers and entries here that another device numbered, readable or not. */
async function lettersMet(tx: BackendTx, own: string | null): Promise<readonly string[]> {
  const rows = [...(await tx.all('papers')), ...(await tx.all('entries'))];
  return rows.flatMap((row) => (isPlainObject(row) && row.device !== own ? letterOf(row) : []));
}

const drawn = (below: number): number => (crypto.getRandomValues(new Uint16Array(1))[0] ?? 0) % below;
