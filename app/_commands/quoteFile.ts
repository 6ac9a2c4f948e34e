import { readFile } from 'node:fs/promises';
import { faceAddresses } from '@/app/_papers/faceAddresses';
import { paperFile } from '@/app/_papers/paperFile';
import { platformZip } from '@/app/_papers/platformZip';
import type { Face } from '@/lib/lettering/faceTable';
import { lettersMissing } from '@/lib/papers/lettersMissing';
import { paperOf } from '@/lib/papers/paperOf';
import { picturesOf } from '@/lib/papers/picturesOf';
import { labelsFor } from '@/lib/papers/words/labelsFor';
import type { Quote } from '@/shared/schemas/orderPapers';
import type { PaperSettings } from '@/shared/schemas/seller';

interface QuoteInFile {
  readonly quote: Quote;
  /** The workshop's own words for labels. */
  readonly words: PaperSettings['words'];
  /** The bytes of a file that came with the order; null where it did not. */
  readonly fileOf: (sha256: string) => Promise<Uint8Array<ArrayBuffer> | null>;
}

type QuoteFile =
  | {
      readonly kind: 'written';
      readonly bytes: Uint8Array;
      /** Names of pictures that could not be shown. */
      readonly lost: readonly string[];
    }
  /** Nobody here draws letters that the type lacks. */
  | { readonly kind: 'lettersMissing'; readonly letters: readonly string[] };

/** @returns a quote as a PDF, written as the app writes it. */
export async function quoteFile({ quote, words, fileOf }: QuoteInFile): Promise<QuoteFile> {
  const source = { kind: 'quote', body: quote } as const;
  const missing = lettersMissing(source, words).filter(({ fate }) => fate === 'picture');
  if (missing.length > 0)
    return {
      kind: 'lettersMissing',
      letters: missing.map(({ letter, codePoints }) => `${letter} (${codePoints})`),
    };
  const pictures = new Map<string, Blob>();
  for (const id of picturesOf(paperOf(source, labelsFor(quote.language, words)))) {
    const bytes = await fileOf(id);
    if (bytes !== null) pictures.set(id, new Blob([bytes]));
  }
  const { file, lost } = await paperFile(
    { kind: 'paper', source, words, pictures },
    { facesOf, foreign: null, zip: platformZip, asPng: async () => null },
  );
  const names = namesOf(quote);
  return {
    kind: 'written',
    bytes: new Uint8Array(await file.arrayBuffer()),
    lost: lost.map((id) => names.get(id) ?? id),
  };
}

/** The names under which its pictures were taken in, by their files. */
function namesOf({ seller, goods }: Quote): ReadonlyMap<string, string> {
  const pictures = [seller.logo, ...goods.flatMap(({ prints }) => prints.map(({ picture }) => picture))];
  return new Map(pictures.flatMap((one) => (one === null ? [] : [[one.fileId, one.fileName]])));
}

async function facesOf(faces: readonly Face[]): Promise<ReadonlyMap<Face, Uint8Array>> {
  const files = new Map<Face, Uint8Array>();
  for (const face of faces) files.set(face, new Uint8Array(await readFile(faceAddresses[face])));
  return files;
}
