import type { Halftone } from './dotArea';
import { inkOfEncoded } from './inkModel';

/** Ink of every value a pixel can have, worked out once: a picture has millions of pixels and few values. */
export interface InkTable {
  /** Largest number of one channel. */
  readonly most: 255 | 65_535;
  /** Ink by the number of one channel, where nothing shows through. */
  readonly solid: Float64Array;
  /**
   * Ink by number × alpha + most × (most − alpha), over `blendStep`: a see-through pixel laid on white. Of 8
   * bits every result has a place of its own; of 16 it goes to the nearest of 65,536. Built when first asked
   * for, since most pictures have no see-through pixel.
   */
  readonly blended: () => Float64Array;
  readonly blendStep: number;
}

/** Tables of models in use: working one out takes longer than measuring a small picture. */
const known = new WeakMap<Halftone, Map<number, InkTable>>();

/** @returns the table for pixels of 8 or 16 bits a channel. */
export function inkTable(most: 255 | 65_535, model: Halftone): InkTable {
  const ofModel = known.get(model) ?? new Map<number, InkTable>();
  known.set(model, ofModel);
  const table = ofModel.get(most) ?? newTable(most, model);
  ofModel.set(most, table);
  return table;
}

function newTable(most: 255 | 65_535, model: Halftone): InkTable {
  const solid = inkOfSteps(most, model);
  let blended = most === 255 ? undefined : solid;
  return {
    most,
    solid,
    blended() {
      blended ??= inkOfSteps(most * most, model);
      return blended;
    },
    blendStep: most === 255 ? 1 : most,
  };
}

function inkOfSteps(steps: number, model: Halftone): Float64Array {
  const ink = new Float64Array(steps + 1);
  for (let step = 0; step <= steps; step += 1) ink[step] = inkOfEncoded(step / steps, model);
  return ink;
}
