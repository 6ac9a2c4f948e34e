import type { BitReader } from './bitReader';
import type { HuffmanTable } from './huffman';

/** Passes over one block; false where its data make no sense. `block` counts in what the component stores. */
export type BlockReader = (block: number) => boolean;

const NO_TABLE: HuffmanTable = new Uint16Array(0);
const COEFFICIENTS = 64;
/** Differences of eight-bit pictures have 11 bits at the most; some writers store one more. */
const MOST_BITS = 15;

/** The first coefficient of a block: ITU-T T.81, F.2.2.1. */
function first(bits: BitReader, table: HuffmanTable): boolean {
  const size = bits.symbol(table);
  if (size < 0 || size > MOST_BITS) return false;
  bits.bits(size);
  return true;
}

/** All coefficients at once: F.2.2. */
export function wholeBlocks(
  bits: BitReader,
  table: HuffmanTable = NO_TABLE,
  others: HuffmanTable = NO_TABLE,
): BlockReader {
  return () => {
    if (!first(bits, table)) return false;
    for (let at = 1; at < COEFFICIENTS; at += 1) {
      const code = bits.symbol(others);
      if (code < 0) return false;
      const size = code & 15;
      const zeros = code >> 4;
      if (size === 0 && zeros < 15) return true;
      at += zeros;
      if (at >= COEFFICIENTS) return false;
      bits.bits(size);
    }
    return true;
  };
}

/** The first coefficient of progressive pictures: G.1.2.1. */
export const firstBlocks =
  (bits: BitReader, isRefining: boolean, table: HuffmanTable = NO_TABLE): BlockReader =>
  () => {
    if (!isRefining) return first(bits, table);
    bits.bits(1);
    return true;
  };

interface Band {
  readonly from: number;
  readonly to: number;
  /** Which coefficients of which block are not zero. */
  readonly isSet: Uint32Array;
}

/** Another band of coefficients, roughly: G.1.2.2. The blocks still to be passed over are forgotten by `restart`. */
export function bandBlocks(bits: BitReader, { from, to, isSet }: Band, table: HuffmanTable = NO_TABLE) {
  let over = 0;
  const read: BlockReader = (block) => {
    if (over > 0) {
      over -= 1;
      return true;
    }
    for (let at = from; at <= to; at += 1) {
      const code = bits.symbol(table);
      if (code < 0) return false;
      const size = code & 15;
      const zeros = code >> 4;
      if (size === 0 && zeros < 15) {
        over = (1 << zeros) + bits.bits(zeros) - 1;
        return true;
      }
      at += zeros;
      if (at > to) return false;
      if (size > 0) {
        bits.bits(size);
        set(isSet, block, at);
      }
    }
    return true;
  };
  return { read, restart: () => (over = 0) };
}

/** The same band, one bit finer: G.1.2.3. */
export function finerBlocks(bits: BitReader, { from, to, isSet }: Band, table: HuffmanTable = NO_TABLE) {
  let over = 0;
  const mend = (block: number, at: number): boolean => {
    if (!has(isSet, block, at)) return false;
    bits.bits(1);
    return true;
  };
  const read: BlockReader = (block) => {
    let at = from;
    for (; at <= to && over === 0; at += 1) {
      const code = bits.symbol(table);
      if (code < 0 || (code & 15) > 1) return false;
      let zeros = code >> 4;
      const isNew = (code & 15) === 1;
      if (isNew) bits.bits(1);
      else if (zeros < 15) {
        over = (1 << zeros) + bits.bits(zeros);
        break;
      }
      for (; at <= to; at += 1) {
        if (mend(block, at)) continue;
        zeros -= 1;
        if (zeros < 0) break;
      }
      if (isNew && at > to) return false;
      if (isNew) set(isSet, block, at);
    }
    if (over === 0) return true;
    for (; at <= to; at += 1) mend(block, at);
    over -= 1;
    return true;
  };
  return { read, restart: () => (over = 0) };
}

function set(isSet: Uint32Array, block: number, at: number): void {
  const word = block * 2 + (at >> 5);
  isSet[word] = (isSet[word] ?? 0) | (1 << (at & 31));
}
const has = (isSet: Uint32Array, block: number, at: number): boolean =>
  ((isSet[block * 2 + (at >> 5)] ?? 0) & (1 << (at & 31))) !== 0;
