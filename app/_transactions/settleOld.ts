import type { BackendConnection } from '@/app/_backend/backendConnection';
import type { SaveFailure } from '@/app/_backend/saveFailure';
import { nextTask } from '@/app/_clock/nextTask';
import type { Registry } from '@/lib/stored/registry';
import { dropUnusedFiles } from './dropUnusedFiles';
import { settleFiles } from './settleFiles';
import { isUnsettled } from './settleRecords';

/**
 * Settles what an earlier build has left, in one transaction that is on the disk when it ends.
 *
 * @param isAgain the store was open before, and may be another by now
 * @returns why it could not be kept; null where all is well
 */
export async function settleOld(
  connection: BackendConnection,
  registry: Registry,
  isAgain: boolean,
): Promise<SaveFailure | null> {
  const old = await connection.attempt('read', (tx) => isUnsettled(tx, registry));
  if (!isAgain && !(old.ok && old.value)) return null;
  // Whatever writes settles first.
  const settled = await connection.attempt('writeStrict', async () => undefined);
  return settled.ok ? null : settled.problem;
}

/**
 * Names old files by what is in them and lets go of those nobody names any more. Nobody waits for it.
 *
 * @returns whether documents were written, and why not all could be
 */
export async function tidyFiles(connection: BackendConnection): ReturnType<typeof settleFiles> {
  const settled = await settleFiles(connection, nextTask);
  // What could not be cleared today can be tomorrow.
  const files = await connection.attempt('read', async (tx) => tx.keys('files'));
  if (files.ok && files.value.length > 0) await connection.attempt('write', dropUnusedFiles);
  return settled;
}
