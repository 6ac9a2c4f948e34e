import { browserDecoder } from './browserDecoder';
import type { PictureQuestion } from './messages';
import { pictureHandler } from './pictureHandler';

/* Pictures are unpacked and measured here, off the page's thread. */
const channel = new MessageChannel();
const waiting: (() => void)[] = [];
channel.port2.onmessage = () => waiting.shift()?.();

const take = pictureHandler({
  decoder: browserDecoder,
  post: (reply) => {
    const transfer = reply.kind === 'read' ? [reply.reading.thumbnail.rgba.buffer] : [];
    self.postMessage(reply, { transfer });
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
