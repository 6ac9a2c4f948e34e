import type { Formatter } from '@/app/_words/formatter';

/** What is asked of what a run took. */
export const actualWords = {
  noted: 'What the run took',
  forms: {
    blanks: 'Blanks used',
    sheets: 'Sheets used',
    ink: 'Ink used',
    money: 'Freight, fees, income',
  },
  used: { blanks: 'Blanks used', sheets: 'Sheets used', ink: 'Ink' },
  rollUsed: 'Roll used',
  amounts: {
    blanksAmount: 'Paid for those blanks',
    sheetsAmount: 'Paid for that paper',
    freight: 'Freight',
    otherCost: 'Packaging, drive and the rest',
    fees: 'Fees',
    reprints: 'Reprints',
    revenue: 'Brought in, without tax',
  },
  /** Whole blanks and sheets, rounded up. */
  now: (of: 'blanks' | 'sheets' | 'ink', quantity: number, { number }: Formatter) =>
    `now ${of === 'ink' ? number(quantity, 1) : number(Math.ceil(quantity - 1e-9))}`,
  moreThanLaidOut: (laidOut: string) =>
    `Only ${laidOut} were laid out when it began. Every one more makes the run dearer: check it, or leave it where more were fetched.`,
  missing: {
    blanks: 'How many blanks that was for is missing.',
    sheets: 'How much paper that was for is missing.',
    all: 'Nothing is typed yet.',
  },
} as const;

/** Closing a run, and its stock. */
export const closeTable = {
  close: 'Close the run',
  reopen: 'Open the run again',
  book: 'Book it in stock',
  withStock: 'Book what it moved in stock as well',
  open: 'What it moved in stock is not booked yet.',
  rest: 'Since it was booked, what was noted of the run changed: only the difference is booked.',
  booked: 'Its stock is booked.',
  notBooked: 'Of this nothing is booked by itself:',
  bookedSave: 'Its stock is booked, save what nobody noted enough of:',
  fold: 'What it moves in stock',
  nothing: 'Nothing to book: no piece, sheet or ink is noted, or all of it is booked.',
  stock: 'To the stock',
} as const;
