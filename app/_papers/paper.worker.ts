import type { WorkerReady } from '@/app/_workers/workerMessages';
import { asPng } from './asPng';
import { deviceType } from './deviceType';
import { fetchFaces } from './fetchFaces';
import type { PaperQuestion, PaperReply } from './messages';
import { paperFile } from './paperFile';
import { platformZip } from './platformZip';

/* Papers are set here, off the page's thread. */
self.onmessage = ({ data }: MessageEvent<PaperQuestion>) => {
  paperFile(data, { facesOf: fetchFaces, foreign: deviceType(), zip: platformZip, asPng }).then(
    (written) => post({ kind: 'written', ...written }),
    (error: unknown) => post({ kind: 'failed', why: error instanceof Error ? error.message : String(error) }),
  );
};

const post = (reply: PaperReply | WorkerReady): void => self.postMessage(reply);

post({ kind: 'ready' });
