/** Runs a search to its end without a pause. */
export function atOnce<Found>(search: Generator<unknown, Found>): Found {
  for (;;) {
    const { done, value } = search.next();
    if (done === true) return value;
  }
}
