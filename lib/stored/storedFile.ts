import { idSchema } from '@/shared/schemas/basics';
import { z } from '@/shared/schemas/z';

/** A file of the maker's, kept as it came. Documents name it by its id. */
const storedFileSchema = z.strictObject({
  id: idSchema,
  name: z.string().min(1).max(200),
  content: z.instanceof(Uint8Array),
});

export type StoredFile = Readonly<z.infer<typeof storedFileSchema>>;

/** @returns a row of the store as a file; null for one that cannot be read. */
export function readStoredFile(row: unknown): StoredFile | null {
  const file = storedFileSchema.safeParse(row);
  return file.success ? file.data : null;
}
