import { connect, createServer, type Socket } from 'node:net';

/** A line to the server as a page sees it. */
export interface LineSpeed {
  readonly bytesPerSecond: number;
  readonly roundTripMs: number;
}

export interface SlowLine {
  readonly origin: string;
  /** Bytes that came down since the line was opened. */
  readonly bytes: () => number;
  readonly close: () => void;
}

/** No more than this is let through at once: small enough that connections share the line evenly. */
const SLICE_BYTES = 1_448;

/**
 * A line to a server with a speed and a way of its own. It stands outside of the browser, because the browser's own
 * brake leaves out what workers and service workers fetch; here all of them share one line, as on a phone.
 */
export async function openSlowLine(
  target: URL,
  { bytesPerSecond, roundTripMs }: LineSpeed,
): Promise<SlowLine> {
  let bytes = 0;
  /** When the line is next free. */
  let freeAt = 0;
  const sockets = new Set<Socket>();

  const server = createServer((near) => {
    const far = connect(Number(target.port), target.hostname);
    for (const socket of [near, far]) {
      socket.setNoDelay(true);
      sockets.add(socket);
      socket.on('error', () => {
        near.destroy();
        far.destroy();
      });
      socket.on('close', () => sockets.delete(socket));
    }
    // The greeting of a connection costs a round trip of its own before anything is asked.
    const openAt = performance.now() + roundTripMs;
    const up = inTurn((asked) => far.writable && far.write(asked));
    const down = inTurn((answer) => near.writable && near.write(answer));
    near.on('data', (asked: Buffer) => up(Math.max(openAt, performance.now()) + roundTripMs / 2, asked));
    far.on('data', (answer: Buffer) => {
      for (let from = 0; from < answer.length; from += SLICE_BYTES) {
        const slice = answer.subarray(from, from + SLICE_BYTES);
        bytes += slice.length;
        freeAt = Math.max(freeAt, performance.now()) + (slice.length / bytesPerSecond) * 1000;
        down(freeAt + roundTripMs / 2, slice);
      }
    });
    near.on('close', () => far.destroy());
    far.on('close', () => down(freeAt + roundTripMs / 2, null, () => near.end()));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('the slow line has no port');
  return {
    origin: `http://127.0.0.1:${address.port}`,
    bytes: () => bytes,
    close: () => {
      for (const socket of sockets) socket.destroy();
      server.close();
    },
  };
}

// Helpers

/** Lets pieces out when they are due, never one before another. */
function inTurn(send: (piece: Buffer) => unknown) {
  const queue: { readonly dueAt: number; readonly piece: Buffer | null; readonly then?: () => void }[] = [];
  let isWaiting = false;
  const wait = (dueAt: number) => {
    if (isWaiting) return;
    isWaiting = true;
    setTimeout(pump, Math.max(0, dueAt - performance.now()));
  };
  const pump = () => {
    isWaiting = false;
    const now = performance.now();
    for (let next = queue[0]; next !== undefined && next.dueAt <= now; next = queue[0]) {
      queue.shift();
      if (next.piece !== null) send(next.piece);
      next.then?.();
    }
    const [next] = queue;
    if (next !== undefined) wait(next.dueAt);
  };
  return (dueAt: number, piece: Buffer | null, then?: () => void) => {
    queue.push({ dueAt, piece, ...(then && { then }) });
    wait(dueAt);
  };
}
