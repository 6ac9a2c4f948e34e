import type { Job } from '@/shared/schemas/job';

/** What a list says of a job. */
interface JobFacts {
  readonly pieces: number;
  /** Lowest and highest asked price of a piece, up-charges included; null where none is decided. */
  readonly asked: { readonly from: number; readonly to: number } | null;
}

/** @returns the count of pieces and the range of asked prices of a job. */
export function jobFacts({ lines }: Pick<Job, 'lines'>): JobFacts {
  const pieces = lines
    .flatMap(({ quantities }) => quantities)
    .reduce((sum, { quantity }) => sum + quantity, 0);
  const prices = lines.flatMap(({ askedPrice, upCharges, quantities }) => {
    if (askedPrice === null) return [];
    const made = quantities.filter(({ quantity }) => quantity > 0).map(({ size }) => size);
    const sizes = made.length > 0 ? made : [''];
    return sizes.map((name) => askedPrice + (upCharges.find(({ size }) => size === name)?.amount ?? 0));
  });
  return {
    pieces,
    asked: prices.length === 0 ? null : { from: Math.min(...prices), to: Math.max(...prices) },
  };
}
