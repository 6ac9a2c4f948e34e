import { type AskedWorker, askWorker } from '@/app/_workers/askWorker';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { Picture } from '@/shared/schemas/picture';
import { drawSvg } from './drawSvg';
import { type PreviewAnswer, type PreviewQuestion, previewOf } from './previewOf';

type ReadFile = (id: string) => Promise<StoredFile | null>;
type PreviewWorker = Pick<AskedWorker<PreviewQuestion, PreviewAnswer>, 'ask'>;

interface Previews {
  /** A kept picture, small; null where it is not on this device or can no longer be drawn. Never closed: it is shared. */
  readonly of: (picture: Picture, readFile: ReadFile) => Promise<ImageBitmap | null>;
  /** A picture that was just read need not be unpacked again to be shown. */
  readonly give: (fileId: string, bitmap: ImageBitmap) => void;
}

/** Each takes up to 4 MB; what is let go and shown nowhere is the collector's. */
const MOST_HELD = 24;

/** Makes the small picture of each file once for all who show it, off the page's thread. */
export function createPreviews(
  worker: PreviewWorker,
  draw: (svg: string, size: PreviewQuestion['size']) => Promise<ImageBitmap> = drawSvg,
): Previews {
  const held = new Map<string, Promise<ImageBitmap | null>>();

  const hold = (fileId: string, made: Promise<ImageBitmap | null>) => {
    held.delete(fileId);
    held.set(fileId, made);
    for (const [oldest] of held) if (held.size > MOST_HELD) held.delete(oldest);
  };

  const answered = (fileId: string, question: PreviewQuestion): Promise<PreviewAnswer> =>
    new Promise((resolve) =>
      worker.ask(fileId, question, (reply) =>
        // Better made here, at the cost of a short halt, than a picture said to be gone that is there.
        resolve(reply.kind === 'answered' ? reply.answer : previewOf(question)),
      ),
    );

  const make = async (picture: Picture, readFile: ReadFile): Promise<ImageBitmap | null> => {
    const file = await readFile(picture.fileId);
    if (file === null) return null;
    const { width, height } = picture;
    const answer = await answered(picture.fileId, { file: file.content, size: { width, height } });
    if (answer.kind !== 'draw') return answer.kind === 'shown' ? answer.bitmap : null;
    return draw(answer.svg, answer.size).catch(() => null);
  };

  return {
    async of(picture, readFile) {
      const { fileId } = picture;
      const made = held.get(fileId) ?? make(picture, readFile);
      hold(fileId, made);
      const bitmap = await made;
      // The file may be chosen again.
      if (bitmap === null && held.get(fileId) === made) held.delete(fileId);
      return bitmap;
    },
    give: (fileId, bitmap) => hold(fileId, Promise.resolve(bitmap)),
  };
}

let previews: Previews | null = null;

/** The small pictures of this tab; their worker starts with the first that was not just read. */
export function appPreviews(): Previews {
  previews ??= createPreviews(
    askWorker({
      start: () => new Worker(new URL('./preview.worker.ts', import.meta.url), { type: 'module' }),
      pauseMs: 0,
    }),
  );
  return previews;
}
