/** A quantity at which sheets come out full. */
export interface QuantitySweetSpot {
  readonly quantity: number;
  /** Beyond the quantity asked. */
  readonly more: number;
  /** Which of the prints then have no spare place, as places in the list asked. */
  readonly full: readonly number[];
}

/** How a print shares sheets. */
export interface SharedPrint {
  /** Prints on one sheet, 1 or more. */
  readonly perSheet: number;
  /** Prints already wanted for other pieces on the same sheets, 0 or more. */
  readonly others: number;
}

/**
 * The next quantities at which a print leaves no place spare on its last sheet. A print alone on its sheet is left
 * out: every quantity fills those.
 *
 * @param quantity pieces asked, whole
 * @param most how many to give
 * @example quantitySweetSpots(37, [{ perSheet: 6, others: 0 }]) gives 42, 48 and 54
 */
export function quantitySweetSpots(
  quantity: number,
  prints: readonly SharedPrint[],
  most = 3,
): readonly QuantitySweetSpot[] {
  const isFull = ({ perSheet, others }: SharedPrint, at: number) => (at + others) % perSheet === 0;
  const next = prints
    .filter(({ perSheet }) => perSheet > 1)
    .flatMap(({ perSheet, others }) => {
      const first = quantity + perSheet - ((quantity + others) % perSheet);
      return Array.from({ length: most }, (_, step) => first + step * perSheet);
    });
  return [...new Set(next)]
    .sort((a, b) => a - b)
    .slice(0, most)
    .map((at) => ({
      quantity: at,
      more: at - quantity,
      full: prints.flatMap((print, index) => (print.perSheet > 1 && isFull(print, at) ? [index] : [])),
    }));
}
