import { idSchema } from '@/shared/schemas/basics';
import { z } from '@/shared/schemas/z';

/** A file of the maker's, kept as it came. Documents name it by its id. */
export const keptFileSchema = z.strictObject({
  id: idSchema,
  name: z.string().min(1).max(200),
  content: z.instanceof(Uint8Array),
});

export type KeptFile = Readonly<z.infer<typeof keptFileSchema>>;

/** @returns a row of the store as a file; null for one that cannot be read. */
export function readKeptFile(row: unknown): KeptFile | null {
  const file = keptFileSchema.safeParse(row);
  return file.success ? file.data : null;
}
