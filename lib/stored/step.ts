import { idSchema } from '@/shared/schemas/basics';
import { z } from '@/shared/schemas/z';
import { type DocumentChange, documentChangeSchema } from './documentChange';

/** One edit in the history, without the documents' content, so that the list stays small enough to hold. */
const stepSchema = z.strictObject({
  seq: z.int().min(1),
  /** Orders steps by when they were last done or undone; greater is later. */
  turn: z.int().min(1),
  /** What the edit was, in words, as the undo button says it. */
  label: z.string(),
  /** The tab that made the edit. */
  tab: z.string(),
  /** When the edit was last added to, in milliseconds since 1970. */
  at: z.int().min(0),
  /** `lost`: its content can no longer be read, so it is neither undone nor redone. */
  state: z.enum(['done', 'undone', 'lost']),
  /** The field that was edited; edits of the same field in quick succession become one step. */
  coalesceKey: z.string().exactOptional(),
  /** Revision of each document right after the edit. */
  revisions: z.record(z.string(), z.int().min(1)),
});

/** The content of one step: its documents before and after, and the entries it wrote. */
export const stepContentSchema = z.strictObject({
  seq: z.int().min(1),
  changes: z.array(documentChangeSchema),
  /** Entries that belong to the step; undo takes them back. */
  noted: z.array(idSchema).exactOptional(),
  /** Entries that came in with the step from a copy or another device; undo takes them back as well. */
  arrived: z.array(idSchema).exactOptional(),
  /** What drafts became known by when they came in with the step; undo forgets it. */
  met: z
    .array(z.strictObject({ id: idSchema, hashes: z.array(z.string()), bodies: z.array(z.unknown()) }))
    .exactOptional(),
  /** Entries by which the last undo took them back; redo takes these back in their turn. */
  takers: z.array(idSchema).exactOptional(),
});

export type Step = Readonly<z.infer<typeof stepSchema>>;
export type StepContent = Readonly<Omit<z.infer<typeof stepContentSchema>, 'changes'>> & {
  readonly changes: readonly DocumentChange[];
};

/** @returns the steps that can be read; a row of a later build is left where it is and not offered. */
export const readSteps = (rows: readonly unknown[]): readonly Step[] =>
  rows.flatMap((row) => {
    const step = stepSchema.safeParse(row);
    return step.success ? [step.data] : [];
  });
