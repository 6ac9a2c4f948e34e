import { sameValue } from '@/lib/merging/sameValue';
import type { Change } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import { changesBack } from './changesBack';

/** @returns whether what changes wrote is still what stands. */
export const changesStand = (changes: readonly Change[], input: JobInput): boolean =>
  changesBack(changes, input).every(({ value }, index) => sameValue(value, changes[index]?.value));
