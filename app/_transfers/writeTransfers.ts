import { type LossNews, lossNews } from '@/app/_workers/lossNews';
import { ownWorker } from '@/app/_workers/ownWorker';
import type { SheetsToPrint } from '@/lib/exports/sheetsToPrint';
import type { TransferQuestion, TransferReply, WrittenTransfers } from './messages';
import { openSvg } from './svgRows';

/** What the page learns of a file; `written` or `failed` comes last. */
export type TransferNews =
  | { readonly kind: 'progress'; readonly share: number }
  | ({ readonly kind: 'written' } & WrittenTransfers)
  | LossNews;

interface WritingOptions {
  /** The kept file of a picture, read when its turn comes; null where it is no longer kept. */
  readonly readFile: (key: string) => Promise<Blob | null>;
  readonly onNews: (news: TransferNews) => void;
  readonly startWorker?: () => Worker;
}

/**
 * Writes sheets in a worker of its own, which ends with the file: all it held is free again.
 *
 * @returns ends it at once, in whatever it is at
 */
export function writeTransfers(
  job: SheetsToPrint,
  { readFile, onNews, startWorker = startTransferWorker }: WritingOptions,
): () => void {
  let drawing: ReturnType<typeof openSvg> | null = null;
  let hasEnded = false;
  const worker = ownWorker<TransferQuestion, TransferReply>({
    start: startWorker,
    onReply: (reply) => void hear(reply),
    onLost: (loss) => tell(lossNews(loss, worker.tryNow)),
    onTryAgain: () => worker.post({ kind: 'write', job }),
  });
  worker.post({ kind: 'write', job });
  return end;

  function end(): void {
    if (hasEnded) return;
    hasEnded = true;
    closeDrawing();
    worker.end();
  }

  function tell(news: TransferNews): void {
    if (hasEnded) return;
    if (news.kind === 'written' || news.kind === 'failed') end();
    onNews(news);
  }

  async function hear(reply: TransferReply): Promise<void> {
    switch (reply.kind) {
      case 'fileWanted':
        return bring(() => readFile(reply.key));
      case 'rowsWanted':
        return draw(reply);
      default:
        tell(reply);
    }
  }

  async function bring(read: () => Promise<Blob | null>): Promise<void> {
    try {
      const file = await read();
      if (!hasEnded) worker.post({ kind: 'file', file });
    } catch (error) {
      tell({ kind: 'failed', why: error instanceof Error ? error.message : String(error) });
    }
  }

  async function draw({
    svg,
    size,
    y,
    height,
  }: Extract<TransferReply, { kind: 'rowsWanted' }>): Promise<void> {
    if (svg !== null) {
      closeDrawing();
      drawing = openSvg(svg, size);
    }
    try {
      const bitmap = await (await drawing)?.rows(y, height);
      if (bitmap === undefined) return;
      if (hasEnded) bitmap.close();
      else worker.post({ kind: 'rows', bitmap }, [bitmap]);
    } catch {
      // The worker tells whose picture it is.
      if (!hasEnded) worker.post({ kind: 'notDrawn' });
    }
  }

  function closeDrawing(): void {
    drawing?.then(({ close }) => close()).catch(() => undefined);
    drawing = null;
  }
}

const startTransferWorker = () =>
  new Worker(new URL('./transfers.worker.ts', import.meta.url), { type: 'module' });
