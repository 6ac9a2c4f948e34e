/* What the worker uses of its own world. The compiler's library for it cannot stand beside the one for pages. */

interface LastingEvent extends Event {
  /** Not used; by it the library knows what it is given. */
  readonly addRoutes?: () => Promise<void>;
  readonly waitUntil: (done: Promise<unknown>) => void;
}

interface AskingEvent extends LastingEvent {
  readonly request: Request;
  readonly respondWith: (answer: Promise<Response>) => void;
}

interface Tab {
  readonly postMessage: (message: unknown) => void;
}

export interface WorkerScope {
  readonly location: { readonly origin: string };
  readonly clients: {
    readonly claim: () => Promise<void>;
    readonly matchAll: (of: { readonly type: 'window' }) => Promise<readonly Tab[]>;
  };
  readonly addEventListener: {
    (type: 'install' | 'activate', listener: (event: LastingEvent) => void): void;
    (type: 'fetch', listener: (event: AskingEvent) => void): void;
  };
}
