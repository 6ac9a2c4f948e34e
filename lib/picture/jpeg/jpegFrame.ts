import { byteReader } from '@/lib/picture/byteReader';

export interface JpegComponent {
  readonly id: number;
  /** Blocks across and down in one unit of the picture. */
  readonly across: number;
  readonly down: number;
  /** Blocks of 8 × 8 that hold it. */
  readonly columns: number;
  readonly rows: number;
  /** Columns stored, whole units. */
  readonly storedColumns: number;
  /** A bit for each of the 64 coefficients of a block that is not zero; only progressive pictures need it. */
  readonly isSet: Uint32Array;
}

export interface JpegFrame {
  readonly isProgressive: boolean;
  readonly components: readonly JpegComponent[];
  /** Units of the picture, each as large as the coarsest component needs. */
  readonly unitColumns: number;
  readonly unitRows: number;
}

const BLOCK = 8;
const PROGRESSIVE = 0xc2;

/** @returns the frame of a JPEG, ITU-T T.81, B.2.2 and A.1.1; null where it makes no sense. */
export function jpegFrame(marker: number, data: Uint8Array): JpegFrame | null {
  const { u8, u16 } = byteReader(data);
  const [height, width, count] = [u16(1), u16(3), u8(5)];
  if (!height || !width || !count || data.length < 6 + count * 3) return null;
  const isProgressive = marker === PROGRESSIVE;
  const parts = Array.from({ length: count }, (_, index) => {
    const factors = u8(7 + index * 3) ?? 0;
    return { id: u8(6 + index * 3) ?? 0, across: factors >> 4, down: factors & 15 };
  });
  if (parts.some(({ across, down }) => across < 1 || across > 4 || down < 1 || down > 4)) return null;
  const most = {
    across: Math.max(...parts.map(({ across }) => across)),
    down: Math.max(...parts.map(({ down }) => down)),
  };
  const unitColumns = Math.ceil(width / (BLOCK * most.across));
  const unitRows = Math.ceil(height / (BLOCK * most.down));
  const components = parts.map(({ id, across, down }): JpegComponent => {
    const storedColumns = unitColumns * across;
    return {
      id,
      across,
      down,
      columns: Math.ceil(Math.ceil((width * across) / most.across) / BLOCK),
      rows: Math.ceil(Math.ceil((height * down) / most.down) / BLOCK),
      storedColumns,
      isSet: new Uint32Array(isProgressive ? storedColumns * unitRows * down * 2 : 0),
    };
  });
  return { isProgressive, components, unitColumns, unitRows };
}
