/** @returns profit as a share of the price, from profit as a share of cost (0.25 → 0.2). */
export const marginOfMarkup = (markup: number): number => markup / (1 + markup);

/** @returns profit as a share of cost, from profit as a share of the price below 1 (0.2 → 0.25). */
export const markupOfMargin = (margin: number): number => margin / (1 - margin);
