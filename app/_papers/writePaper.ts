import { type LossNews, lossNews } from '@/app/_workers/lossNews';
import { ownWorker } from '@/app/_workers/ownWorker';
import type { PaperQuestion, PaperReply } from './messages';

/** What the page learns of a paper; `written` or `failed` comes last. */
type PaperNews = PaperReply | LossNews;

/**
 * Sets a paper in a worker of its own, which ends with it.
 *
 * @returns ends it at once
 */
export function writePaper(
  question: PaperQuestion,
  onNews: (news: PaperNews) => void,
  startWorker: () => Worker = startPaperWorker,
): () => void {
  let hasEnded = false;
  const end = () => {
    hasEnded = true;
    worker.end();
  };
  const tell = (news: PaperNews) => {
    if (hasEnded) return;
    if (news.kind !== 'notStarted') end();
    onNews(news);
  };
  const worker = ownWorker<PaperQuestion, PaperReply>({
    start: startWorker,
    onReply: tell,
    onLost: (loss) => tell(lossNews(loss, worker.tryNow)),
    onTryAgain: () => worker.post(question),
  });
  worker.post(question);
  return end;
}

const startPaperWorker = () => new Worker(new URL('./paper.worker.ts', import.meta.url), { type: 'module' });
