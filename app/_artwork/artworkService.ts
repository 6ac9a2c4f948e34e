import type { PixelBox } from '@/lib/picture/pixelGrid';
import { drawSvg } from './drawSvg';
import type { PictureQuestion, PictureReply } from './messages';

/** What the page learns of one picture; `read`, `refused`, `cancelled` and `failed` come last, one of them. */
export type PictureNews = Exclude<PictureReply, { kind: 'draw' }>;

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
  let worker: Worker | null = null;
  let last = 0;
  let listener: ((news: PictureNews) => void) | null = null;
  let patience: ReturnType<typeof setTimeout> | undefined;

  const ask = (question: PictureQuestion, transfer: Transferable[] = []) =>
    worker?.postMessage(question, transfer);

  return {
    read(file, { printWidthMm, crop }, onNews) {
      if (listener !== null) tell({ kind: 'cancelled', number: last });
      // A worker that has not heard a cancel yet would let the next picture wait behind the last.
      if (patience !== undefined) end();
      worker ??= start();
      last += 1;
      const number = last;
      listener = onNews;
      ask({ kind: 'read', number, file, printWidthMm, crop });
      return { cancel: () => cancel(number) };
    },
    stop() {
      end();
      listener = null;
    },
  };

  function start(): Worker {
    const started = startWorker();
    started.onmessage = ({ data }: MessageEvent<PictureReply>) => hear(data);
    started.onerror = (event) => {
      event.preventDefault();
      end();
      tell({ kind: 'failed', number: last, why: event.message || 'the worker could not be started' });
    };
    return started;
  }

  function hear(reply: PictureReply): void {
    forgetPatience();
    if (reply.number !== last) return;
    if (reply.kind === 'draw') void draw(reply.number, reply.svg, reply.size);
    else tell(reply);
  }

  async function draw(number: number, svg: string, size: Parameters<typeof drawSvg>[1]): Promise<void> {
    try {
      const bitmap = await drawSvg(svg, size);
      ask({ kind: 'drawn', number, bitmap }, [bitmap]);
    } catch (error) {
      ask({ kind: 'notDrawn', number, why: error instanceof Error ? error.message : String(error) });
    }
  }

  function tell(news: PictureNews): void {
    const hears = listener;
    if (news.kind !== 'progress') listener = null;
    hears?.(news);
  }

  function cancel(number: number): void {
    if (number !== last || listener === null) return;
    ask({ kind: 'cancel', number });
    tell({ kind: 'cancelled', number });
    forgetPatience();
    patience = setTimeout(end, PATIENCE_MS);
  }

  function forgetPatience(): void {
    clearTimeout(patience);
    patience = undefined;
  }

  function end(): void {
    forgetPatience();
    worker?.terminate();
    worker = null;
  }
}

const startArtworkWorker = () =>
  new Worker(new URL('./artwork.worker.ts', import.meta.url), { type: 'module' });
