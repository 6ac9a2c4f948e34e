interface PlantedFlag {
  /** Where it stands on the bar, 0 to 1. */
  readonly ratio: number;
  readonly text: string;
  readonly widthPx: number;
  /** How much larger than usual the type is. */
  readonly scale: number;
}

/** The cloth of a flag, px of the drawing before it is scaled. */
interface FlagCloth {
  readonly wide: number;
  /** How far its middle is moved from its point: at the ends the cloth stays on the ruler. */
  readonly shift: number;
}

/** @returns how wide the cloth with the price is, and where it hangs. */
export function flagCloth({ ratio, text, widthPx, scale }: PlantedFlag): FlagCloth {
  const wholePx = widthPx / scale;
  const wide = Math.max(44, text.length * 8.6 + 20);
  const middlePx = ratio * wholePx;
  return { wide, shift: Math.min(wholePx - wide / 2, Math.max(wide / 2, middlePx)) - middlePx };
}

/** @returns whether a place beside the point of a flag lies on its cloth, px. */
export function isOnCloth(fromFlagPx: number, flag: PlantedFlag): boolean {
  const { wide, shift } = flagCloth(flag);
  return Math.abs(fromFlagPx / flag.scale - shift) <= wide / 2;
}
