/** Shares of four inks, 0–1 each: of one pixel, or on average over a print. */
export interface ChannelShares {
  readonly cyan: number;
  readonly magenta: number;
  readonly yellow: number;
  readonly black: number;
}

/**
 * Moves the grey that three inks have in common to black, or a share of it: ISO 32000-1 (PDF 1.7), section 10.3.4,
 * "Conversion from DeviceRGB to DeviceCMYK", with black generation and undercolour removal alike, BG(k) = UCR(k) = s·k.
 * Ink falls by twice the grey that moves: no pixel ends above two channels in full from s = 0.5 on, above three at 0.
 *
 * @param blackShare s, 0–1
 */
export function generateBlack(
  cyan: number,
  magenta: number,
  yellow: number,
  blackShare: number,
): ChannelShares {
  const black = blackShare * Math.min(cyan, magenta, yellow);
  return { cyan: cyan - black, magenta: magenta - black, yellow: yellow - black, black };
}

/**
 * The same ink where black prints less of the grey. Nothing but sums, so that it holds of means as of pixels: what was
 * measured once tells of every printer.
 *
 * @param full channels with all grey in black
 * @param blackShare share of the grey that black prints, 0–1
 */
export function withBlackShare(full: ChannelShares, blackShare: number): ChannelShares {
  const black = blackShare * full.black;
  const kept = full.black - black;
  return { cyan: full.cyan + kept, magenta: full.magenta + kept, yellow: full.yellow + kept, black };
}

/** @returns the ink of all channels together, 0 to 4. */
export const totalShare = ({ cyan, magenta, yellow, black }: ChannelShares): number =>
  cyan + magenta + yellow + black;
