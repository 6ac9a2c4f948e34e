import type { BackendTx } from '@/app/_backend/backend';
import { type DocumentChange, type Snapshot, snapshotOf } from '@/lib/stored/documentChange';
import { recordStep } from '@/lib/stored/recordStep';
import { readSteps, type Step, type StepContent, stepContentSchema } from '@/lib/stored/step';
import type { Stored } from '@/shared/schemas/stored';

export interface HistoryEntry {
  readonly label: string;
  readonly tab: string;
  readonly at: number;
  readonly since?: number;
  readonly coalesceKey?: string;
  readonly moves: readonly {
    readonly before: Snapshot | null;
    /** Revision the document had in the store; null where it was not there. */
    readonly foundRevision: number | null;
    readonly document: Stored;
  }[];
  /** Ids of the entries that were written with it. */
  readonly noted?: readonly string[];
  /** Ids of entries that came in with it. */
  readonly arrived?: readonly string[];
  /** What drafts became known by when they came in with it. */
  readonly met?: StepContent['met'];
  readonly overwrote: boolean;
}

/** Enters an edit into the kept history, inside the transaction that writes it; gives back all steps. */
export async function enterHistory(tx: BackendTx, entry: HistoryEntry): Promise<readonly Step[]> {
  const rows = await tx.all('steps');
  const steps = readSteps(rows);
  const { label, tab, at, since, coalesceKey, moves, noted = [], arrived = [], met = [], overwrote } = entry;
  const { step, extended, dropped } = recordStep(
    steps,
    {
      label,
      tab,
      at,
      ...(since === undefined ? {} : { since }),
      ...(coalesceKey === undefined ? {} : { coalesceKey }),
      found: Object.fromEntries(moves.map(({ document, foundRevision }) => [document.id, foundRevision])),
      revisions: Object.fromEntries(moves.map(({ document }) => [document.id, document.revision])),
      overwrote,
    },
    highestSeq(rows),
  );
  const earlier = extended ? await changesOf(tx, step.seq) : [];
  const changes = moves.map(({ before, document }) => {
    const first = earlier.find(({ id }) => id === document.id);
    return {
      id: document.id,
      kind: document.kind,
      before: first === undefined ? before : first.before,
      after: snapshotOf(document),
    };
  });
  await tx.put('steps', [step]);
  await tx.put('contents', [
    {
      seq: step.seq,
      changes,
      ...(noted.length === 0 ? {} : { noted }),
      ...(arrived.length === 0 ? {} : { arrived }),
      ...(met.length === 0 ? {} : { met }),
    },
  ]);
  await tx.drop('steps', dropped);
  await tx.drop('contents', dropped);
  return [...steps.filter(({ seq }) => seq !== step.seq && !dropped.includes(seq)), step];
}

async function changesOf(tx: BackendTx, seq: number): Promise<readonly DocumentChange[]> {
  const content = stepContentSchema.safeParse((await tx.get('contents', [seq]))[0]);
  return content.success ? content.data.changes : [];
}

/** Rows that cannot be read hold their numbers too. */
const highestSeq = (rows: readonly unknown[]): number =>
  rows.reduce<number>((highest, row) => {
    const seq = typeof row === 'object' && row !== null && 'seq' in row ? row.seq : 0;
    return typeof seq === 'number' ? Math.max(highest, seq) : highest;
  }, 0);
