import type { askedFor } from './askedFor';
import { noServer, notForTheRouter, nothingKept } from './withoutServer';

/** A link or a page that the server has not answered for by then comes from the device. */
const WAIT_MS = 3_000;
/** Before a link loads a document: what was edited just before is written meanwhile, else the browser asks about it. */
const SETTLE_MS = 300;

interface Sources {
  /** A page or file of this build, by its path. */
  readonly kept: (path: string) => Promise<Response | undefined>;
  readonly keptBefore: (request: Request) => Promise<Response | undefined>;
  /** Whether all that was kept is still there. */
  readonly isWhole: () => Promise<boolean>;
  readonly fetch: (request: Request) => Promise<Response>;
}

/** Where the answer to a request comes from; null leaves it to the browser. */
export function answersFrom(sources: Sources) {
  return (request: Request, asked: ReturnType<typeof askedFor>): Promise<Response> | null => {
    switch (asked.kind) {
      case 'page':
        return pageOf(sources, request, asked.page);
      case 'otherPage':
        return sources.fetch(request).catch(nothingKept);
      case 'slashTooMany':
        return Promise.resolve(new Response(null, { status: 308, headers: { Location: asked.address } }));
      case 'router':
        return inTime(sources, request).catch(async () => {
          await pause(SETTLE_MS);
          return notForTheRouter();
        });
      case 'api':
        return sources.fetch(request).catch(noServer);
      case 'file':
        return fileOf(sources, request, asked.path);
      case 'none':
        return null;
      default:
        return asked satisfies never;
    }
  };
}

/** From the device, at once and of the same build as its scripts. */
async function pageOf(sources: Sources, request: Request, page: string): Promise<Response> {
  const kept = await sources.kept(page);
  if (kept === undefined) return sources.fetch(request).catch(nothingKept);
  // Where files are missing, the server's page with its own files is the better one.
  return (await sources.isWhole()) ? kept : inTime(sources, request).catch(() => kept);
}

async function fileOf(sources: Sources, request: Request, path: string): Promise<Response> {
  const kept = (await sources.kept(path)) ?? (await sources.keptBefore(request));
  if (kept === undefined) return sources.fetch(request);
  // A worker reads what it is to run behind the # of its address. A kept answer brings the address it was kept under;
  // a new one has that of the request.
  return request.destination === 'worker' ? new Response(kept.body, kept) : kept;
}

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** Fails where the server does not answer soon enough; what it answers later is dropped. */
function inTime(sources: Sources, request: Request): Promise<Response> {
  return new Promise((resolve, reject) => {
    setTimeout(() => reject(new Error('The server does not answer.')), WAIT_MS);
    sources.fetch(request).then(resolve, reject);
  });
}
