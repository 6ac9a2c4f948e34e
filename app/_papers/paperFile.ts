import { blobPart } from '@/app/_artwork/blobPart';
import type { EmbeddedPicture, Zip } from '@/lib/embedding/embeddedPicture';
import { embedJpeg } from '@/lib/embedding/embedJpeg';
import { embedPng } from '@/lib/embedding/embedPng';
import { coverTexts } from '@/lib/exports/cover';
import { writeCover } from '@/lib/exports/coverPage';
import type { Face } from '@/lib/lettering/faceTable';
import type { ForeignType } from '@/lib/lettering/foreignType';
import { neededFaces } from '@/lib/lettering/missingLetters';
import { lettersMissing } from '@/lib/papers/lettersMissing';
import { paperOf } from '@/lib/papers/paperOf';
import { paperTexts } from '@/lib/papers/paperTexts';
import { labelsFor } from '@/lib/papers/words/labelsFor';
import { writePaper } from '@/lib/papers/writePaper';
import { inspectPicture } from '@/lib/picture/inspectPicture';
import { refuseBytes } from '@/lib/picture/readHeader';
import type { PaperQuestion, PaperReply } from './messages';

interface PaperTools {
  readonly facesOf: (faces: readonly Face[]) => Promise<ReadonlyMap<Face, Uint8Array>>;
  readonly foreign: ForeignType | null;
  readonly zip: Zip;
  /** A picture of another format as a PNG; null where the device cannot read it. */
  readonly asPng: (file: Blob) => Promise<Blob | null>;
}

type PaperFile = Omit<Extract<PaperReply, { readonly kind: 'written' }>, 'kind'>;

/** Writes any paper; the worker is only its wiring. */
export async function paperFile(question: PaperQuestion, tools: PaperTools): Promise<PaperFile> {
  const { foreign, facesOf } = tools;
  const inBlob = (bytes: Uint8Array) => new Blob([blobPart(bytes)], { type: 'application/pdf' });
  switch (question.kind) {
    case 'cover': {
      const { cover } = question;
      const faces = await facesOf(neededFaces(coverTexts(cover)));
      return { file: inBlob(await writeCover(cover, { faces, foreign })), pages: 1, lost: [], missing: [] };
    }
    case 'paper': {
      const { source, words, pictures } = question;
      const paper = paperOf(source, labelsFor(source.body.language, words));
      const faces = await facesOf(neededFaces(paperTexts(paper)));
      const pictureOf = async (id: string) => {
        const file = pictures.get(id);
        return file === undefined ? null : embedded(file, tools);
      };
      const { bytes, pages, lost } = await writePaper(paper, { faces, foreign, pictureOf });
      return { file: inBlob(bytes), pages, lost, missing: lettersMissing(source, words) };
    }
    default:
      return question satisfies never;
  }
}

/** One picture at a time is in memory; what the format has words for goes in as it came. */
async function embedded(file: Blob, tools: PaperTools): Promise<EmbeddedPicture | null> {
  const asItCame = await embeddedBytes(file, tools.zip);
  if (asItCame !== null) return asItCame;
  const png = await tools.asPng(file);
  return png === null ? null : embeddedBytes(png, tools.zip);
}

async function embeddedBytes(file: Blob, zip: Zip): Promise<EmbeddedPicture | null> {
  if (refuseBytes(file.size) !== null) return null;
  const bytes = new Uint8Array(await file.arrayBuffer());
  const header = inspectPicture(bytes);
  if (!header.ok || header.value.kind === 'vector') return null;
  switch (header.value.format) {
    case 'png':
      return embedPng(bytes, header.value, zip);
    case 'jpeg':
      return embedJpeg(bytes, header.value, zip);
    default:
      return null;
  }
}
