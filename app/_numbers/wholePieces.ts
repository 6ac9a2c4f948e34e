/** Pieces are typed whole; documents from elsewhere may ask for parts of one, which the check tells. */
export const wholePieces = { decimals: 0 } as const;
