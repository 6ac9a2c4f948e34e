import type { SaveFailure } from '@/app/_backend/saveFailure';
import { blobSource } from '@/app/_store/blobSource';
import { breathing } from '@/app/_store/breathing';
import type { DocumentActions } from '@/app/_store/documentStore';
import type { ReplaceOutcome } from '@/app/_store/documentsState';
import { hereOf } from '@/app/_store/hereOf';
import type { StoreCore } from '@/app/_store/storeCore';
import { arrangeArrival } from '@/lib/copies/arrangeArrival';
import type { Arrival, ArrivalChoice, ArrivalPlan } from '@/lib/copies/arrival';
import type { Copy } from '@/lib/copies/copy';
import type { ReadCopy } from '@/lib/copies/copyReading';
import { planArrival } from '@/lib/copies/planArrival';
import { readCopy } from '@/lib/copies/readCopy';
import { failed, ok, type Result } from '@/shared/result';
import type { CopyLook } from './copyActions';

/** How the files of copies that were looked at come out of them. */
const filesOf = new WeakMap<Copy, ReadCopy['fileOf']>();

/** Reads a file and holds it against what is here. */
export async function lookAtCopy(file: Blob, core: StoreCore): Promise<CopyLook> {
  try {
    const pause = breathing();
    const read = await readCopy(blobSource(file), { kinds: core.kinds, pause });
    if (read.state === 'notACopy') return read;
    filesOf.set(read.copy, read.fileOf);
    const { registry } = core.kinds;
    return {
      state: 'copy',
      file,
      plan: await planArrival(await hereOf(core), read.copy, { registry, pause }),
    };
  } catch (error) {
    // Browsers throw where a file was moved, or may not be read.
    if (!(error instanceof DOMException)) throw error;
    return { state: 'notACopy', why: { code: 'notReadable', message: error.message } };
  }
}

interface TakingCopy {
  readonly core: StoreCore;
  readonly arrive: DocumentActions<Record<string, unknown>>['arrive'];
}

/** Keeps the files one after the other, and then all the rest in one step. */
export async function takeCopy(
  label: string,
  { plan: looked }: { readonly plan: ArrivalPlan },
  how: ArrivalChoice,
  { core, arrive }: TakingCopy,
): Promise<ReplaceOutcome> {
  await core.queue.flush();
  const { copy } = looked;
  const { registry } = core.kinds;
  const plan = await planArrival(await hereOf(core), copy, { registry, pause: breathing() });
  const { goes: _, goesBack: __, files, staying, ...rest } = arrangeArrival(plan, how, registry);
  const kept = await keepFiles(files, copy, core);
  if (!kept.ok) return { state: 'notKept', why: kept.problem };
  const outcome = await arrive(
    label,
    { ...rest, files: [] },
    staying === 'all' ? { mode: 'beside' } : { mode: 'replace', staying },
  );
  if (outcome.state === 'notKept') return outcome;
  // Another tab that opened meanwhile may have let go of files which nothing named yet.
  const again = await keepFiles(files, copy, core);
  if (!again.ok) return { state: 'notKept', why: again.problem };
  const newLetter = outcome.isRenamed ? core.tabState().device?.letter : undefined;
  return newLetter === undefined ? { state: 'replaced' } : { state: 'replaced', newLetter };
}

// Helpers

async function keepFiles(
  files: Arrival['files'],
  copy: Copy,
  { connection }: StoreCore,
): Promise<Result<null, SaveFailure>> {
  const there = await connection.attempt('read', async (tx) => tx.keys('files'));
  if (!there.ok) return failed(there.problem);
  const kept = new Set(there.value);
  for (const { sha256, name } of files.filter((file) => !kept.has(file.sha256))) {
    const content = await contentOf(copy, sha256);
    if (content === null) return failed('fileGone');
    const put = await connection.attempt('write', async (tx) =>
      tx.put('files', [{ id: sha256, name, content: new Blob([content]) }]),
    );
    if (!put.ok) return failed(put.problem);
  }
  return ok(null);
}

/** It was whole when the copy was looked at: without it the file has been taken away since. */
async function contentOf(copy: Copy, sha256: string): Promise<Uint8Array<ArrayBuffer> | null> {
  try {
    return (await filesOf.get(copy)?.(sha256)) ?? null;
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
    return null;
  }
}
