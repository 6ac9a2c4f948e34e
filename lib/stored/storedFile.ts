import { idSchema } from '@/shared/schemas/basics';
import { z } from '@/shared/schemas/z';

/** A file of the maker's, kept as it came. Documents name it by its id. */
const storedFileSchema = z.strictObject({
  id: idSchema,
  name: z.string().min(1).max(200),
  // A blob is handed on by reference; bytes, as earlier builds kept them, are copied wherever they go.
  content: z.union([
    z.instanceof(Blob),
    z.instanceof(Uint8Array).transform((bytes): Blob => new Blob([bytes])),
  ]),
});

export type StoredFile = Readonly<z.infer<typeof storedFileSchema>>;

/** @returns a row of the store as a file; null for one that cannot be read. */
export function readStoredFile(row: unknown): StoredFile | null {
  const file = storedFileSchema.safeParse(row);
  return file.success ? file.data : null;
}

/** @returns what is in a file; null where the browser can no longer read what it kept. */
export async function bytesOfFile({
  content,
}: Pick<StoredFile, 'content'>): Promise<Uint8Array<ArrayBuffer> | null> {
  try {
    return new Uint8Array(await content.arrayBuffer());
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
    return null;
  }
}
