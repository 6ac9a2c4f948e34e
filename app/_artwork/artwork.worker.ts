import type { WorkerReady } from '@/app/_workers/workerMessages';
import { browserDecoder } from './browserDecoder';
import type { PictureQuestion, PictureReply } from './messages';
import { pictureHandler } from './pictureHandler';

/* Pictures are unpacked and measured here, off the page's thread. */
const channel = new MessageChannel();
const waiting: (() => void)[] = [];
channel.port2.onmessage = () => waiting.shift()?.();

const take = pictureHandler({
  decoder: browserDecoder,
  post: (reply) => {
    self.postMessage(reply, { transfer: lent(reply) });
  },
  // A message to oneself comes after those that wait already, and sooner than any timer.
  pause: () =>
    new Promise((resolve) => {
      waiting.push(resolve);
      channel.port1.postMessage(null);
    }),
});

self.onmessage = ({ data }: MessageEvent<PictureQuestion>) => {
  void take(data);
};

/** Handed over, not copied. */
const lent = (reply: PictureReply): Transferable[] =>
  reply.kind === 'read' && reply.preview !== null ? [reply.preview] : [];

const ready: WorkerReady = { kind: 'ready' };
self.postMessage(ready);
