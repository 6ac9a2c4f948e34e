import type { BackendTx, Row } from '@/app/_backend/backend';
import { type Exchanged, exchangedSchema, MOST_BODIES, MOST_HASHES } from '@/lib/copies/exchanged';
import type { StepContent } from '@/lib/stored/step';

type Met = NonNullable<StepContent['met']>;

/** @returns what drafts became known by with an arrival: nothing of it is known any more once that is undone. */
export async function knownBy(tx: BackendTx, arriving: readonly Row[]): Promise<Met> {
  const rows = arriving.flatMap(readExchanged);
  const before = await rowsOf(tx, rows);
  return rows.flatMap(({ id, hashes }) => {
    const known = new Set(before.get(id)?.hashes);
    const fresh = hashes.filter((hash) => !known.has(hash));
    return fresh.length === 0 ? [] : [{ id, hashes: fresh, bodies: [] }];
  });
}

/** Forgets it, so that the same comes in as at first. @returns it with the bodies, to be known again by redo. */
export async function forget(tx: BackendTx, met: Met): Promise<Met> {
  const rows = await rowsOf(tx, met);
  const forgotten = met.flatMap(({ id, hashes }) => {
    const row = rows.get(id);
    return row === undefined ? [] : [{ row, gone: new Set(hashes) }];
  });
  await tx.put(
    'exchanged',
    forgotten.map(({ row, gone }) => ({
      ...row,
      hashes: row.hashes.filter((hash) => !gone.has(hash)),
      bodies: row.bodies.filter(({ hash }) => !gone.has(hash)),
    })),
  );
  return met.map(({ id, hashes }) => ({
    ...{ id, hashes },
    bodies: rows.get(id)?.bodies.filter(({ hash }) => hashes.includes(hash)) ?? [],
  }));
}

/** Knows again what was forgotten. */
export async function recall(tx: BackendTx, met: Met): Promise<void> {
  const rows = await rowsOf(tx, met);
  await tx.put(
    'exchanged',
    met.flatMap(({ id, hashes, bodies }) => {
      const row = rows.get(id) ?? { id, hashes: [], bodies: [] };
      return readExchanged({
        id,
        hashes: [...row.hashes.filter((hash) => !hashes.includes(hash)), ...hashes].slice(-MOST_HASHES),
        bodies: [...row.bodies.filter(({ hash }) => !hashes.includes(hash)), ...bodies].slice(-MOST_BODIES),
      });
    }),
  );
}

// Helpers

async function rowsOf(
  tx: BackendTx,
  drafts: readonly { readonly id: string }[],
): Promise<ReadonlyMap<string, Exchanged>> {
  const rows = await tx.get(
    'exchanged',
    drafts.map(({ id }) => id),
  );
  return new Map(rows.flatMap(readExchanged).map((row) => [row.id, row]));
}

/** A row of another shape is as good as none. */
function readExchanged(row: unknown): readonly Exchanged[] {
  const parsed = exchangedSchema.safeParse(row);
  return parsed.success ? [parsed.data] : [];
}
