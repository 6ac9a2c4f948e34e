import type { WorkerReady } from '@/app/_workers/workerMessages';
import { type Cover, coverTexts } from '@/lib/exports/cover';
import { writeCover } from '@/lib/exports/coverPage';
import { neededFaces } from '@/lib/lettering/missingLetters';
import { deviceType } from './deviceType';
import { fetchFaces } from './fetchFaces';
import type { PaperReply } from './messages';

/* Papers are set here, off the page's thread. */
self.onmessage = ({ data }: MessageEvent<Cover>) => {
  write(data).then(
    (bytes) => post({ kind: 'written', bytes }),
    (error: unknown) => post({ kind: 'failed', why: error instanceof Error ? error.message : String(error) }),
  );
};

async function write(cover: Cover): Promise<Uint8Array> {
  const faces = await fetchFaces(neededFaces(coverTexts(cover)));
  return writeCover(cover, { faces, foreign: deviceType() });
}

const post = (reply: PaperReply | WorkerReady): void => self.postMessage(reply);

post({ kind: 'ready' });
