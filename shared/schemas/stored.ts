import { idSchema } from './basics';
import { z } from './z';

/** Milliseconds since 1970-01-01T00:00Z, as the clock of the device had them. */
export const instantSchema = z.int().min(0);

/** What a kind is called in records. */
export const kindSchema = z.string().min(1).max(40);

/**
 * The wrapping every document is kept in. The body stays unknown here: the strict schema of its kind reads it
 * once the body has been brought up to the version that schema knows.
 */
export const storedSchema = z.strictObject({
  id: idSchema,
  /** Which of the kinds of document; one that no table here knows was written by a later build. */
  kind: kindSchema,
  /** Version of the shape of the body. */
  version: z.int().min(1),
  /** Goes up by one with every write of this document. */
  revision: z.int().min(1),
  updatedAt: instantSchema,
  /** Set on a deleted document, which stays so that the deletion can be undone. */
  deletedAt: instantSchema.exactOptional(),
  body: z.unknown(),
});

/** A document as it is kept; the body has been parsed when `Body` is anything but unknown. */
export type Stored<Kind extends string = string, Body = unknown> = Readonly<
  Omit<z.infer<typeof storedSchema>, 'kind' | 'body'>
> & { readonly kind: Kind; readonly body: Body };

/** What a copy called itself before it was an archive. */
export const BACKUP_FORMAT = 'pressminute-backup';
