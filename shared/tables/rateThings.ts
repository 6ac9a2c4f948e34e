/** What jobs reckon with by a rate of its own, and what it is called as a consumable; by what it is used. */
export const rateThings = {
  tape: { name: 'Tape or sleeve', per: 'press', called: /tape|sleeve/i },
  protectivePaper: { name: 'Protective paper', per: 'press', called: /paper|protect|parchment/i },
  order: { name: 'Carton, tape and note', per: 'order' },
} as const;

export type RateThing = keyof typeof rateThings;
