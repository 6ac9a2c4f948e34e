import { drawSvg } from '@/app/_artwork/drawSvg';
import type { PictureFile } from '@/lib/exports/sheetsToPrint';
import { ownEntry } from '@/lib/job/ownEntry';
import type { PlannedSheet } from '@/lib/layout/apartSheets';
import { inspectPicture } from '@/lib/picture/inspectPicture';
import type { PictureHeader } from '@/lib/picture/pictureHeader';
import { svgAtSize } from '@/lib/picture/svg/svgAtSize';
import { svgText } from '@/lib/picture/svg/svgText';
import { vectorPixels } from '@/lib/picture/svg/vectorPixels';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { JobInput } from '@/shared/schemas/request';
import { namedPrint } from './sheetNames';

interface SheetPictures {
  /** By artwork id. */
  readonly pictures: ReadonlyMap<string, PictureFile>;
  /** Names of artworks whose file is no longer there or cannot be read. */
  readonly lost: readonly string[];
}

/** @returns the kept files of the prints on some sheets, as they are embedded. */
export async function sheetPictures(
  input: JobInput,
  sheets: readonly PlannedSheet[],
  readFile: (id: string) => Promise<StoredFile | null>,
): Promise<SheetPictures> {
  const widest = new Map<string, number>();
  for (const piece of sheets.flatMap(({ pieces }) => pieces)) {
    const { artworkId, widthMm } = namedPrint(input, piece);
    widest.set(artworkId, Math.max(widthMm, widest.get(artworkId) ?? 0));
  }
  const pictures = new Map<string, PictureFile>();
  const lost: string[] = [];
  for (const [artworkId, widthMm] of widest) {
    const artwork = ownEntry(input.artworks, artworkId);
    if (artwork?.picture == null) continue;
    const file = await readFile(artwork.picture.fileId);
    const picture = file === null ? null : await embeddable(new Uint8Array(file.content), widthMm);
    if (picture === null) lost.push(artwork.name);
    else pictures.set(artworkId, picture);
  }
  return { pictures, lost };
}

/** The file as it came where a page can hold it; else its pixels, drawn by the browser, without loss. */
async function embeddable(bytes: Uint8Array<ArrayBuffer>, widthMm: number): Promise<PictureFile | null> {
  const header = inspectPicture(bytes);
  if (!header.ok) return null;
  const kind = kindAsItIs(header.value);
  if (kind !== null) return { kind, bytes };
  let bitmap: ImageBitmap | null = null;
  try {
    bitmap = await drawn(bytes, header.value, widthMm);
    return { kind: 'png', bytes: await asPng(bitmap) };
  } catch {
    return null;
  } finally {
    bitmap?.close();
  }
}

/** A page knows nothing of turned pictures, colour profiles and frames. */
function kindAsItIs(header: PictureHeader): PictureFile['kind'] | null {
  if (header.kind === 'vector' || header.orientation !== 1 || header.isAnimated) return null;
  if (header.colourTag === 'profile') return null;
  return header.format === 'png' || header.format === 'jpeg' ? header.format : null;
}

async function drawn(
  bytes: Uint8Array<ArrayBuffer>,
  header: PictureHeader,
  widthMm: number,
): Promise<ImageBitmap> {
  if (header.kind === 'vector') {
    const size = vectorPixels(header.size, widthMm);
    return drawSvg(svgAtSize(svgText(bytes), header, size), size);
  }
  return createImageBitmap(new Blob([bytes], { type: `image/${header.format}` }), {
    imageOrientation: 'from-image',
  });
}

async function asPng(bitmap: ImageBitmap): Promise<Uint8Array> {
  const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('the browser draws nothing');
  context.drawImage(bitmap, 0, 0);
  const blob = await canvas.convertToBlob({ type: 'image/png' });
  return new Uint8Array(await blob.arrayBuffer());
}
