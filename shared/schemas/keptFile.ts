import { sha256Schema } from './happened';
import { daySchema } from './rate';
import { z } from './z';

/**
 * No file is kept that a copy could not hold: each goes into one, and comes out of it, in one piece of memory, which a
 * phone has room for up to about this.
 */
export const MOST_FILE_BYTES = 100_000_000;

/** A file kept beside the documents under its own SHA-256. */
export const keptFileSchema = z.strictObject({
  fileId: sha256Schema,
  fileName: z.string().trim().min(1).max(200),
  bytes: z.int().min(1).max(MOST_FILE_BYTES),
  /** Media type as the device told it, RFC 6838; empty where it told none. */
  mediaType: z.string().max(120).default(''),
});

/** What a kept file shows or proves. */
const attachmentPurposes = ['permission', 'approval', 'sample', 'receipt', 'exemption', 'other'] as const;

export const attachmentSchema = keptFileSchema.extend({
  purpose: z.enum(attachmentPurposes),
  addedOn: daySchema,
});

export type KeptFile = z.infer<typeof keptFileSchema>;
export type Attachment = z.infer<typeof attachmentSchema>;
