import { z } from '@/shared/schemas/z';

/** How tabs tell each other which documents they wrote. */
export interface TabMessages {
  readonly tell: (ids: readonly string[]) => void;
  readonly close: () => void;
}

const messageSchema = z.strictObject({ wrote: z.array(z.string()).max(100_000) });

/** Listens to the other tabs; where the browser has no channel, they are read again when the tab is shown. */
export function openTabMessages(name: string, onWrote: (ids: readonly string[]) => void): TabMessages {
  if (typeof BroadcastChannel === 'undefined') return { tell: () => undefined, close: () => undefined };
  const channel = new BroadcastChannel(name);
  channel.onmessage = (event: MessageEvent<unknown>) => {
    // A tab of another build may say something else; what it wrote is read when the tab is shown.
    const message = messageSchema.safeParse(event.data);
    if (message.success) onWrote(message.data.wrote);
  };
  return {
    tell: (ids) => channel.postMessage({ wrote: [...ids] }),
    close: () => channel.close(),
  };
}
