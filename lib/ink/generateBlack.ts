/** Shares of four inks, 0–1 each: of one pixel, or on average over a print. */
export interface ChannelShares {
  readonly cyan: number;
  readonly magenta: number;
  readonly yellow: number;
  readonly black: number;
}

/**
 * Moves the grey that three inks have in common to black: ISO 32000-1 (PDF 1.7), section 10.3.4, "Conversion
 * from DeviceRGB to DeviceCMYK", with black generation and undercolour removal both whole, BG(k) = UCR(k) = k.
 * Ink falls by twice the grey, so no pixel ends above two channels in full.
 */
export function generateBlack(cyan: number, magenta: number, yellow: number): ChannelShares {
  const black = Math.min(cyan, magenta, yellow);
  return { cyan: cyan - black, magenta: magenta - black, yellow: yellow - black, black };
}

/** @returns the ink of all channels together, 0 to 4. */
export const totalShare = ({ cyan, magenta, yellow, black }: ChannelShares): number =>
  cyan + magenta + yellow + black;
