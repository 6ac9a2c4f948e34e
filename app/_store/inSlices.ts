/** So many records are read at a time; then the page may do something else. */
const SLICE = 1000;

/** Works through a long list without holding the page up. Only where nothing is written: waiting ends a transaction. */
export async function inSlices<From, To>(
  items: readonly From[],
  work: (item: From) => To,
): Promise<readonly To[]> {
  const done: To[] = [];
  for (let from = 0; from < items.length; from += SLICE) {
    if (from > 0) await new Promise((resolve) => setTimeout(resolve));
    for (const item of items.slice(from, from + SLICE)) done.push(work(item));
  }
  return done;
}
