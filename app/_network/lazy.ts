/** Code, or whatever else is fetched when it is first needed. */
export interface Lazy<Value> {
  /** Fetches it, once; after a failure the next call fetches again. */
  readonly fetch: () => Promise<Value>;
  /** Null until it is here. */
  readonly here: () => Value | null;
}

/** @param load one attempt to fetch it; never answers null */
export function lazy<Value>(load: () => Promise<Value>): Lazy<Value> {
  let here: Value | null = null;
  let coming: Promise<Value> | null = null;
  const attempt = async (): Promise<Value> => {
    try {
      here = await load();
      return here;
    } finally {
      // A failure kept for good would be the answer to every later attempt.
      coming = null;
    }
  };
  return {
    here: () => here,
    fetch: () => {
      if (here !== null) return Promise.resolve(here);
      coming ??= attempt();
      return coming;
    },
  };
}
