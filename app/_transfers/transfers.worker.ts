import { browserDecoder } from '@/app/_artwork/browserDecoder';
import { deviceType } from '@/app/_papers/deviceType';
import { platformZip } from '@/app/_papers/platformZip';
import type { WorkerReady } from '@/app/_workers/workerMessages';
import type { TransferQuestion } from './messages';
import { transferHandler } from './transferHandler';

/* The file to print is written here, off the page's thread. */
const take = transferHandler({
  decoder: browserDecoder,
  zip: platformZip,
  type: deviceType(),
  post: (reply) => self.postMessage(reply),
});

self.onmessage = ({ data }: MessageEvent<TransferQuestion>) => {
  void take(data);
};

const ready: WorkerReady = { kind: 'ready' };
self.postMessage(ready);
