import type { BackendTx } from '@/app/_backend/backend';
import { z } from '@/shared/schemas/z';
import type { Device } from './deviceIdentity';

const lastSchema = z.strictObject({ key: z.string(), last: z.int().min(0) });

/** @returns how many numbers of a series this device has given under its letter: the next is one more. */
export async function lastGiven(tx: BackendTx, device: Device, series: string): Promise<number> {
  const row = lastSchema.safeParse((await tx.get('meta', [keyOf(device, series)]))[0]);
  return row.success ? row.data.last : 0;
}

/** Counts a number as given, in the transaction that keeps what bears it: both are kept or neither. */
export async function noteGiven(tx: BackendTx, device: Device, series: string, count: number): Promise<void> {
  const last = Math.max(count, await lastGiven(tx, device, series));
  await tx.put('meta', [{ key: keyOf(device, series), last }]);
}

const keyOf = ({ id, letter }: Device, series: string): string => `number ${id} ${letter} ${series}`;
