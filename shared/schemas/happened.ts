import { idSchema } from './basics';
import { instantSchema, kindSchema } from './stored';
import { z } from './z';

/** Which device wrote it: drawn once for each store, never anything about the device or its owner. */
export const deviceIdSchema = z.string().regex(/^[a-z0-9]{8,40}$/);

/** A letter that says at a glance which device numbered a paper; without those that look like figures. */
export const deviceLetterSchema = z.string().regex(/^[ABCDEFGHJKLMNPRSTUVWXYZ]$/);

/** Entries and papers of a device are counted together, from 1; no number is ever used again. */
const countSchema = z.int().min(1).max(1e9);

/** SHA-256 in lower-case hexadecimal, FIPS 180-4. */
export const sha256Schema = z.string().regex(/^[0-9a-f]{64}$/);

/** What every entry and every paper is kept in. The body is read by the strict schema of its kind. */
const writtenOnce = {
  /** Device and count, so that two devices never make the same. */
  id: idSchema,
  kind: kindSchema,
  /** Version of the shape of the body. */
  version: z.int().min(1),
  device: deviceIdSchema,
  count: countSchema,
  /** What the clock of the device said. */
  at: instantSchema,
  body: z.unknown(),
} as const;

/** Something that happened: added, never changed; another entry takes it back. */
export const entrySchema = z.strictObject(writtenOnce);

/** A paper's number: how many there were of its series, and the letter of the device; none on those from before. */
export const paperNumberSchema = z.strictObject({
  count: z.int().min(1).max(1e6),
  letter: deviceLetterSchema.nullable(),
});

/** A paper that went out: it never changes, and says itself whether it is still what it was. */
export const paperSchema = z.strictObject({
  ...writtenOnce,
  /** What is numbered together. */
  series: z.string().min(1).max(120),
  number: paperNumberSchema,
  /** The draft it was made from. */
  about: z.strictObject({ kind: kindSchema, id: idSchema }),
  /** Of the canonical text of the body, RFC 8785. */
  sha256: sha256Schema,
  /** The file that went out, kept under its own SHA-256; null where there is none. */
  file: z
    .strictObject({
      sha256: sha256Schema,
      name: z.string().min(1).max(200),
      bytes: z.int().min(1),
    })
    .nullable(),
});

export type PaperNumber = Readonly<z.infer<typeof paperNumberSchema>>;

/** What a body was in the version it was written in, where it has been brought up to a later one to be read. */
interface AsWritten {
  readonly version: number;
  readonly body: unknown;
}

/** An entry as it is read; the body has been parsed when `Body` is anything but unknown. */
export type Entry<Kind extends string = string, Body = unknown> = Readonly<
  Omit<z.infer<typeof entrySchema>, 'kind' | 'body'>
> & { readonly kind: Kind; readonly body: Body; readonly kept?: AsWritten };

/** A paper as it is read; the body has been parsed when `Body` is anything but unknown. */
export type Paper<Kind extends string = string, Body = unknown> = Readonly<
  Omit<z.infer<typeof paperSchema>, 'kind' | 'body'>
> & { readonly kind: Kind; readonly body: Body; readonly kept?: AsWritten };
