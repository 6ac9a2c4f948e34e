export interface SheetSize {
  /** What the maker calls it. */
  readonly name: string;
  /** Self-describing name in the list of media sizes of the Printer Working Group. */
  readonly media: string;
  readonly widthMm: number;
  readonly heightMm: number;
}

const inches = (name: string, media: string, width: number, height: number): SheetSize => ({
  name,
  media,
  widthMm: width * 25.4,
  heightMm: height * 25.4,
});
const metric = (name: string, media: string, widthMm: number, heightMm: number): SheetSize => ({
  name,
  media,
  widthMm,
  heightMm,
});

/** Cut sheets in common use, upright. ISO 216 for the A series; PWG 5101.1 (media standardized names) for all. */
export const sheetSizes = {
  letter: inches('Letter', 'na_letter_8.5x11in', 8.5, 11),
  legal: inches('Legal', 'na_legal_8.5x14in', 8.5, 14),
  tabloid: inches('Tabloid 11 × 17', 'na_ledger_11x17in', 11, 17),
  superB: inches('Super B 13 × 19', 'na_super-b_13x19in', 13, 19),
  a5: metric('A5', 'iso_a5_148x210mm', 148, 210),
  a4: metric('A4', 'iso_a4_210x297mm', 210, 297),
  a3: metric('A3', 'iso_a3_297x420mm', 297, 420),
  a2: metric('A2', 'iso_a2_420x594mm', 420, 594),
} as const satisfies Record<string, SheetSize>;
