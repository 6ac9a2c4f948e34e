import { idSchema, nameSchema } from '@/shared/schemas/basics';
import { deviceIdSchema, deviceLetterSchema, sha256Schema } from '@/shared/schemas/happened';
import { instantSchema, kindSchema } from '@/shared/schemas/stored';
import { z } from '@/shared/schemas/z';

export const COPY_FORMAT = 'pressminute-copy';
export const COPY_FORMAT_VERSION = 2;
/** The text within the archive; some 100,000 jobs. */
export const MOST_TEXT_BYTES = 200_000_000;

const countSchema = z.int().min(0).max(1e7);

/** What a copy says of itself. */
export const copyHeadSchema = z.strictObject({
  format: z.literal(COPY_FORMAT),
  formatVersion: z.literal(COPY_FORMAT_VERSION),
  what: z.union([
    z.literal('everything'),
    z.strictObject({ kind: kindSchema, id: idSchema, name: nameSchema }),
  ]),
  madeAt: instantSchema,
  device: z.strictObject({ id: deviceIdSchema, letter: deviceLetterSchema }).nullable(),
  /** What the maker calls the device; null where it has no name. */
  madeOn: nameSchema.nullable().default(null),
  counts: z.strictObject({
    files: countSchema,
    drafts: countSchema,
    papers: countSchema,
    entries: countSchema,
    unreadable: countSchema,
  }),
});
export type CopyHead = Readonly<z.infer<typeof copyHeadSchema>>;

export const copyFileSchema = z.strictObject({
  sha256: sha256Schema,
  name: z.string().min(1).max(200),
  bytes: z.int().min(0),
});

export const hashesSchema = z.array(sha256Schema).max(1000);
