/** A code for every 16 bits that may come next: its length above, its symbol below; 0 where no code begins so. */
export type HuffmanTable = Uint16Array;

const LONGEST = 16;
const COUNTS_BYTES = 16;

/**
 * Reads the tables of one DHT segment into those known so far: ITU-T T.81, B.2.4.2 and annex C. Coefficients of the
 * first kind stand at 0 to 3, those of the second at 16 to 19.
 *
 * @returns false where the segment is no list of tables
 */
export function readTables(data: Uint8Array, tables: Map<number, HuffmanTable>): boolean {
  for (let at = 0; at < data.length; ) {
    const counts = data.subarray(at + 1, at + 1 + COUNTS_BYTES);
    const symbols = data.subarray(at + 1 + COUNTS_BYTES);
    const total = counts.reduce((sum, count) => sum + count, 0);
    const table = counts.length < COUNTS_BYTES || symbols.length < total ? null : tableOf(counts, symbols);
    if (table === null) return false;
    tables.set(data[at] ?? 0, table);
    at += 1 + COUNTS_BYTES + total;
  }
  return true;
}

function tableOf(counts: Uint8Array, symbols: Uint8Array): HuffmanTable | null {
  const table = new Uint16Array(1 << LONGEST);
  let from = 0;
  let next = 0;
  for (let length = 1; length <= LONGEST; length += 1) {
    const width = 1 << (LONGEST - length);
    for (let count = counts[length - 1] ?? 0; count > 0; count -= 1) {
      if (from + width > table.length) return null;
      table.fill((length << 8) | (symbols[next] ?? 0), from, from + width);
      from += width;
      next += 1;
    }
  }
  return table;
}
