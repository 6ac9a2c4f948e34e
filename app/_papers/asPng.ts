/** As many pixels as a printed side of a page shows. */
const MOST_PX = 2400;

/** A picture that only the browser can read, as a PNG; null where it cannot either, or a worker has no canvas. */
export async function asPng(file: Blob): Promise<Blob | null> {
  if (typeof OffscreenCanvas === 'undefined') return null;
  const bitmap = await createImageBitmap(file).catch(() => null);
  if (bitmap === null) return null;
  const scale = Math.min(1, MOST_PX / Math.max(bitmap.width, bitmap.height));
  const canvas = new OffscreenCanvas(
    Math.max(1, Math.round(bitmap.width * scale)),
    Math.max(1, Math.round(bitmap.height * scale)),
  );
  canvas.getContext('2d')?.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  return canvas.convertToBlob({ type: 'image/png' });
}
