import type { HuffmanTable } from './huffman';

/** Bits of the packed data of a JPEG up to the next marker; a zero after FF is no data: ITU-T T.81, F.1.2.3. */
export interface BitReader {
  /** Begins anew at a byte. */
  readonly startAt: (at: number) => void;
  /** The next symbol; -1 where no code begins like this. */
  readonly symbol: (table: HuffmanTable) => number;
  /** The next bits as a number, 16 at most. */
  readonly bits: (count: number) => number;
  /** Whether more was taken than is there. */
  readonly isExhausted: () => boolean;
  /** Whole bytes not taken, up to the marker, but for padding; after this it has to be started anew. */
  readonly leftBytes: () => number;
  /** Where the marker stands, once `leftBytes` was asked. */
  readonly markerAt: () => number;
}

const ENOUGH = 16;

export function bitReader(bytes: Uint8Array): BitReader {
  let at = 0;
  let held = 0;
  let count = 0;
  /** Bits that stand in for what is not there. */
  let lent = 0;

  const hasData = () => at < bytes.length && (bytes[at] !== 0xff || bytes[at + 1] === 0);

  const isStuffed = (place: number) => bytes[place] === 0 && bytes[place - 1] === 0xff;

  function fill(): void {
    while (count <= 24) {
      const byte = bytes[at] ?? 0;
      if (at >= bytes.length || (byte === 0xff && bytes[at + 1] !== 0)) {
        held <<= 8;
        lent += 8;
      } else {
        held = (held << 8) | byte;
        at += byte === 0xff ? 2 : 1;
      }
      count += 8;
    }
  }

  return {
    startAt(place) {
      at = place;
      held = 0;
      count = 0;
      lent = 0;
    },
    symbol(table) {
      if (count < ENOUGH) fill();
      const code = table[(held >>> (count - ENOUGH)) & 0xffff] ?? 0;
      count -= code >> 8;
      return code === 0 ? -1 : code & 0xff;
    },
    bits(wanted) {
      if (count < ENOUGH) fill();
      count -= wanted;
      return (held >>> count) & ((1 << wanted) - 1);
    },
    isExhausted: () => lent > count,
    leftBytes() {
      for (let back = Math.max(0, (count - lent) >> 3); back > 0; back -= 1) at -= isStuffed(at - 1) ? 2 : 1;
      const lastTaken = bytes[isStuffed(at - 1) ? at - 2 : at - 1];
      let left = 0;
      let run = 0;
      let before: number | undefined;
      for (; hasData(); at += bytes[at] === 0xff ? 2 : 1) {
        run = bytes[at] === before ? run + 1 : 1;
        before = bytes[at];
        left += 1;
      }
      // Zeroed pixels may run up to the marker too: then the last unit was read from them already.
      const isCutOff = run === left && lastTaken === before;
      return isCutOff ? left : left - run;
    },
    markerAt: () => at,
  };
}
