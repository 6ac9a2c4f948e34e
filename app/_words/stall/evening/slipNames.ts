export const slipOrder = ['cash', 'card', 'stock', 'tax', 'result', 'decide'] as const;

type Slip = (typeof slipOrder)[number];

/** The heading of each slip, and its name on the strip. */
export const slipNames: Readonly<Record<Slip, { readonly heading: string; readonly chip: string }>> = {
  cash: { heading: 'Cash', chip: 'Cash' },
  card: { heading: 'Card', chip: 'Card' },
  stock: { heading: 'Stock', chip: 'Stock' },
  tax: { heading: 'Tax', chip: 'Tax' },
  result: { heading: 'Result against plan', chip: 'Result' },
  decide: { heading: 'What it teaches', chip: 'Decide' },
};
