import type { PixelSize } from '@/lib/picture/pictureHeader';

/**
 * Turns a drawing into pixels on the page, since workers cannot. As the source of an image element it runs no
 * script and fetches nothing, whatever it holds.
 *
 * @param svg with its size in pixels written out
 */
export async function drawSvg(svg: string, { width, height }: PixelSize): Promise<ImageBitmap> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image(width, height);
    image.src = address;
    await image.decode();
    return await createImageBitmap(image, { resizeWidth: width, resizeHeight: height });
  } finally {
    URL.revokeObjectURL(address);
  }
}
