import type { PixelSize } from '@/lib/picture/pictureHeader';

interface SvgRows {
  /** Turns some rows into pixels; the page is free between two calls. */
  readonly rows: (y: number, height: number) => Promise<ImageBitmap>;
  readonly close: () => void;
}

/**
 * Opens a drawing to be turned into pixels a strip at a time: only the page can, and the whole at once would hold it up.
 * As the source of an image element it runs no script and fetches nothing, whatever it holds.
 *
 * @param svg with its size in pixels written out
 */
export async function openSvg(svg: string, { width, height }: PixelSize): Promise<SvgRows> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  const image = new Image(width, height);
  // Not `decode`, which a hidden tab may put off.
  await new Promise((resolve, reject) => {
    image.onload = resolve;
    image.onerror = () => reject(new Error('the browser cannot draw it'));
    image.src = address;
  }).catch((error: unknown) => {
    URL.revokeObjectURL(address);
    throw error;
  });
  return {
    rows: (y, rows) => createImageBitmap(image, 0, y, width, rows),
    close: () => URL.revokeObjectURL(address),
  };
}
