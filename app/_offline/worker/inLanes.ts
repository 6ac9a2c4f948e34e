/**
 * Does work on each item, so many at a time. The first failure stops the rest; it is told once all that was under way
 * has ended, so that whoever cleans up after it is not worked against.
 */
export async function inLanes<Item>(
  items: readonly Item[],
  lanes: number,
  work: (item: Item) => Promise<unknown>,
): Promise<void> {
  const waiting = [...items];
  const lane = async (): Promise<void> => {
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
      try {
        await work(next);
      } catch (error) {
        waiting.length = 0;
        throw error;
      }
    }
  };
  const ended = await Promise.allSettled(Array.from({ length: lanes }, lane));
  const failure = ended.find((one) => one.status === 'rejected');
  if (failure !== undefined) throw failure.reason;
}
