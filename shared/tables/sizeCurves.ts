import type { Audience } from '@/shared/schemas/job';
import type { StallAudience } from '@/shared/schemas/sizeMix';

/**
 * Usual mixes of sizes, shares of a crowd. Adults: the middle of ranges that are common practice in the trade
 * (S 10–12, M 23–26, L 29–31, XL 20–23, 2XL 8–10, 3XL 3–5 %); women's cut and youth: from memory.
 */
export const sizeCurves: { readonly [Name in Audience]: Readonly<Record<string, number>> } = {
  adults: { XS: 0.01, S: 0.11, M: 0.245, L: 0.3, XL: 0.205, '2XL': 0.09, '3XL': 0.04 },
  women: { XS: 0.06, S: 0.21, M: 0.3, L: 0.24, XL: 0.13, '2XL': 0.05, '3XL': 0.01 },
  youth: { XS: 0.1, S: 0.24, M: 0.31, L: 0.25, XL: 0.1 },
};

/** Usual mixes of sizes of crowds at a stall: those of orders, people of the trades and runners (both from memory). */
export const stallSizeCurves: { readonly [Name in StallAudience]: Readonly<Record<string, number>> } = {
  ...sizeCurves,
  trades: { S: 0.05, M: 0.17, L: 0.29, XL: 0.26, '2XL': 0.15, '3XL': 0.08 },
  runners: { XS: 0.04, S: 0.17, M: 0.31, L: 0.28, XL: 0.14, '2XL': 0.05, '3XL': 0.01 },
};
