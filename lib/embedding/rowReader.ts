import { DamagedPicture } from './embeddedPicture';

/**
 * Cuts unpacked data into rows of a PNG, each with the number of its filter before it. The row given is lent until the next.
 *
 * @throws DamagedPicture where the data end before the last row
 */
export async function eachRow(
  parts: AsyncIterable<Uint8Array>,
  rowBytes: number,
  rows: number,
  take: (row: Uint8Array, y: number) => Promise<void> | null,
): Promise<void> {
  const row = new Uint8Array(rowBytes);
  let filled = 0;
  let y = 0;
  for await (const part of parts) {
    let at = 0;
    while (at < part.length && y < rows) {
      const piece = part.subarray(at, at + rowBytes - filled);
      row.set(piece, filled);
      filled += piece.length;
      at += piece.length;
      if (filled < rowBytes) break;
      await take(row, y);
      filled = 0;
      y += 1;
    }
  }
  if (y < rows) throw new DamagedPicture(`the picture ends after ${y} of ${rows} rows`);
}
