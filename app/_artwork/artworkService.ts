import { type LossNews, lossNews } from '@/app/_workers/lossNews';
import { ownWorker } from '@/app/_workers/ownWorker';
import type { PixelBox } from '@/lib/picture/pixelGrid';
import { drawSvg } from './drawSvg';
import type { PictureQuestion, PictureReply } from './messages';

/** What the page learns of one picture; `read`, `refused`, `cancelled` and `failed` come last, one of them. */
export type PictureNews = Exclude<PictureReply, { kind: 'draw' }> | (LossNews & { readonly number: number });

export interface ArtworkService {
  /** Reads a picture; a newer one ends the one before. */
  readonly read: (
    file: Blob,
    wanted: { readonly printWidthMm: number; readonly crop: PixelBox | null },
    onNews: (news: PictureNews) => void,
  ) => { readonly cancel: () => void };
  readonly stop: () => void;
}

/** A decoder cannot be interrupted: a worker still silent after this is ended, and the next starts afresh. */
const PATIENCE_MS = 1_000;

/** @param startWorker how the worker is started; the first picture starts it */
export function createArtworkService(startWorker: () => Worker = startArtworkWorker): ArtworkService {
  let last = 0;
  let reading: { readonly question: PictureQuestion; readonly listener: (news: PictureNews) => void } | null =
    null;
  let patience: ReturnType<typeof setTimeout> | undefined;
  const worker = ownWorker<PictureQuestion, PictureReply>({
    start: startWorker,
    onReply: hear,
    onLost: (loss) => {
      forgetPatience();
      tell({ ...lossNews(loss, worker.tryNow), number: last });
    },
    onTryAgain: () => {
      if (reading !== null) worker.post(reading.question);
    },
  });

  return {
    read(file, { printWidthMm, crop }, onNews) {
      if (reading !== null) tell({ kind: 'cancelled', number: last });
      // A worker that has not heard a cancel yet would let the next picture wait behind the last.
      if (patience !== undefined) end();
      last += 1;
      const number = last;
      reading = { question: { kind: 'read', number, file, printWidthMm, crop }, listener: onNews };
      const loss = worker.loss();
      if (loss === null) worker.post(reading.question);
      else tell({ ...lossNews(loss, worker.tryNow), number });
      return { cancel: () => cancel(number) };
    },
    stop() {
      end();
      reading = null;
    },
  };

  function hear(reply: PictureReply): void {
    forgetPatience();
    if (reply.number !== last) return;
    if (reply.kind === 'draw') void draw(reply.number, reply.svg, reply.size);
    else tell(reply);
  }

  async function draw(number: number, svg: string, size: Parameters<typeof drawSvg>[1]): Promise<void> {
    try {
      const bitmap = await drawSvg(svg, size);
      worker.post({ kind: 'drawn', number, bitmap }, [bitmap]);
    } catch (error) {
      worker.post({ kind: 'notDrawn', number, why: error instanceof Error ? error.message : String(error) });
    }
  }

  function tell(news: PictureNews): void {
    const hears = reading?.listener;
    if (news.kind !== 'progress' && news.kind !== 'notStarted') reading = null;
    hears?.(news);
  }

  function cancel(number: number): void {
    if (number !== last || reading === null) return;
    tell({ kind: 'cancelled', number });
    forgetPatience();
    worker.post({ kind: 'cancel', number });
    // One that never came has nothing to stop.
    if (worker.loss() !== null) end();
    else patience = setTimeout(end, PATIENCE_MS);
  }

  function forgetPatience(): void {
    clearTimeout(patience);
    patience = undefined;
  }

  function end(): void {
    forgetPatience();
    worker.end();
  }
}

const startArtworkWorker = () =>
  new Worker(new URL('./artwork.worker.ts', import.meta.url), { type: 'module' });
