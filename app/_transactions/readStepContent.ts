import type { BackendTx } from '@/app/_backend/backend';
import { sameValue } from '@/lib/merging/sameValue';
import type { DocumentChange, Snapshot } from '@/lib/stored/documentChange';
import type { Leaving } from '@/lib/stored/leaving';
import { readBody } from '@/lib/stored/readBody';
import { entryOf, type Registry } from '@/lib/stored/registry';
import { type StepContent, stepContentSchema } from '@/lib/stored/step';

/**
 * Reads what a step of the history holds, brought up to the versions known here.
 *
 * @returns null where it cannot be read, and where a step of an earlier build moved what documents no longer hold and
 *   no entry of it is known: going back in the document would then change nothing, or not what the step says
 */
export async function readStepContent(
  tx: BackendTx,
  seq: number,
  registry: Registry,
): Promise<StepContent | null> {
  const content = stepContentSchema.safeParse((await tx.get('contents', [seq]))[0]);
  if (!content.success) return null;
  const changes: DocumentChange[] = [];
  for (const change of content.data.changes) {
    const before = change.before === null ? null : broughtUp(change.before, change, registry);
    const after = broughtUp(change.after, change, registry);
    if (after === undefined || before === undefined) return null;
    const isInNoted = content.data.noted !== undefined;
    if (!isInNoted && before !== null && !sameValue(before.left, after.left)) return null;
    changes.push({ ...change, before: before?.snapshot ?? null, after: after.snapshot });
  }
  return { ...content.data, changes };
}

interface BroughtUp {
  readonly snapshot: Snapshot;
  /** What leaves it on the way to the known version. */
  readonly left: readonly Leaving[];
}

function broughtUp(
  snapshot: Snapshot,
  { id, kind }: DocumentChange,
  registry: Registry,
): BroughtUp | undefined {
  const entry = entryOf(registry, kind);
  if (entry === undefined) return undefined;
  const left: Leaving[] = [];
  const body = readBody(snapshot.body, snapshot.version, entry, (parting, former) => {
    // The same moment for both sides: only what they say is held against each other.
    left.push(parting(former, { id, at: 0 }));
  });
  return body.ok ? { snapshot: { ...snapshot, version: entry.version, body: body.value }, left } : undefined;
}
