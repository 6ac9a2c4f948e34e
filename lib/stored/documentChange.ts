import { idSchema } from '@/shared/schemas/basics';
import { kindSchema, type Stored } from '@/shared/schemas/stored';
import { z } from '@/shared/schemas/z';

/** A document's content at one moment: what undo goes back to. */
export const snapshotSchema = z.strictObject({
  version: z.int().min(1),
  deleted: z.boolean(),
  body: z.unknown(),
});

/** One document before and after an edit. Before is null where the edit made the document. */
export const documentChangeSchema = z.strictObject({
  id: idSchema,
  kind: kindSchema,
  before: snapshotSchema.nullable(),
  after: snapshotSchema,
});

export type Snapshot = Readonly<z.infer<typeof snapshotSchema>>;
export type DocumentChange = Readonly<
  Omit<z.infer<typeof documentChangeSchema>, 'before' | 'after'> & {
    readonly before: Snapshot | null;
    readonly after: Snapshot;
  }
>;

/** @returns the content of a kept document. */
export const snapshotOf = ({ version, body, deletedAt }: Stored): Snapshot => ({
  version,
  deleted: deletedAt !== undefined,
  body,
});
