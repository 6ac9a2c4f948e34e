import type { Picture } from '@/shared/schemas/picture';

/** What a file of transfers takes, told before it is written. Bytes, roughly. */
interface TransferSize {
  readonly file: number;
  /** In memory while it is written: the file, and the picture at hand beside it. */
  readonly memory: number;
}

/** Pixels that are packed anew, in colour with alpha: measured between 0.1 for flat drawings and 3 for grain. */
const PACKED_PIXEL_BYTES = 1.5;
/** Of a picture that the browser's decoder unpacks. */
const PIXEL_BYTES = 4;
/** Strips, and the code that writes. */
const WORK_BYTES = 20_000_000;

type Measured = Pick<Picture, 'format' | 'bytes' | 'width' | 'height'>;

/** @param pictures each once, however many pieces it is printed as */
export function transferSize(pictures: readonly Measured[]): TransferSize {
  const each = pictures.map(sizeOf);
  const file = each.reduce((sum, one) => sum + one.file, 0);
  return { file, memory: file + WORK_BYTES + Math.max(0, ...each.map(({ work }) => work)) };
}

/** @returns what a file of this picture alone takes in memory: tells which of several to make smaller */
export const memoryOf = (picture: Measured): number => transferSize([picture]).memory;

function sizeOf({ format, bytes, width, height }: Measured) {
  const comesAsItIs = format === 'jpeg' || format === 'png';
  const pixels = width * height;
  return {
    file: comesAsItIs ? bytes : pixels * PACKED_PIXEL_BYTES,
    // A drawing comes in strips.
    work: bytes + (comesAsItIs || format === 'svg' ? 0 : pixels * PIXEL_BYTES),
  };
}
