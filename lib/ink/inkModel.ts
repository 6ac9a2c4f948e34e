import { decodeSrgb } from '@/lib/picture/srgb';
import { dotArea, type Halftone } from './dotArea';

/**
 * How ink is told from a pixel. The picture is taken as what the print shall look like on white paper: each of
 * red, green and blue is the light one ink leaves over. Paper is as white as the screen and full ink throws
 * nothing back, which real ink does not reach; the level this misses is what the maker's refills correct.
 */
export const defaultInkModel: Halftone = { paper: 1, solid: 0, n: 2 };

/** @returns the share of one ink, 0–1, behind an encoded sRGB value, 0–1, before grey moves to black. */
export const inkOfEncoded = (encoded: number, model: Halftone): number => dotArea(decodeSrgb(encoded), model);
