import type { Snapshot } from '@/lib/stored/documentChange';
import { snapshotSchema } from '@/lib/stored/documentChange';
import { sha256OfValue } from '@/lib/stored/sha256';
import { idSchema } from '@/shared/schemas/basics';
import { sha256Schema } from '@/shared/schemas/happened';
import { z } from '@/shared/schemas/z';

/** Of each draft: more often than that nobody carries it without the other device seeing one of them. */
export const MOST_HASHES = 50;
/** Copies are made between two meetings of the devices; what both last had must outlive them. */
export const MOST_BODIES = 4;

/** A draft as it went out or came in. */
export const exchangedSchema = z.strictObject({
  id: idSchema,
  /** The latest last. */
  hashes: z.array(sha256Schema).max(MOST_HASHES),
  /** What stands behind the latest of them, the latest last: what two devices changed is told by it. */
  bodies: z.array(snapshotSchema).max(MOST_BODIES),
});
export type Exchanged = Readonly<z.infer<typeof exchangedSchema>>;

/** @returns what a draft is known by when it meets itself again. */
export const hashOfDraft = ({ deleted, body }: Pick<Snapshot, 'deleted' | 'body'>): string =>
  sha256OfValue({ deleted, body });
