import type { BackendTx } from '@/app/_backend/backend';
import { fileIdsIn } from '@/lib/stored/fileIds';

/** Lets go of files that no document, no paper, no entry and no step of the history names any more. */
export async function dropUnusedFiles(tx: BackendTx): Promise<void> {
  const kept = await tx.keys('files');
  const named = fileIdsIn([
    ...(await tx.all('documents')),
    ...(await tx.all('contents')),
    ...(await tx.all('papers')),
    ...(await tx.all('entries')),
    ...(await tx.all('aside')),
  ]);
  const unused = kept.filter((id): id is string => typeof id === 'string' && !named.has(id));
  await tx.drop('files', unused);
}
