/**
 * Runs a search slice by slice within another that tells what it finds on the way.
 *
 * @yields null after each slice
 */
export function* inSlices<Found>(search: Generator<void, Found>): Generator<null, Found> {
  for (;;) {
    const { done, value } = search.next();
    if (done === true) return value;
    yield null;
  }
}
