import { withCapital } from '@/app/_words/spelledNumber';
import type { OrderTurn } from '@/lib/orders/board/turnOf';

export type WaitsFor = OrderTurn['waits'][number]['why'];

interface WaitName {
  /** Inside a sentence; what is the maker's own to do, after “You”. */
  readonly said: string;
  /** Where a line has room for little; else as it is said. */
  readonly short?: string;
  /** As a row of its own; else as it is said. */
  readonly row?: string;
}

/** What an order waits for, by one name on the board and in its room. */
const names: Readonly<Record<WaitsFor, WaitName>> = {
  answer: { said: 'answer with a quote', short: 'answer' },
  openItem: { said: 'settle what is open', short: 'something missing', row: 'Something still open' },
  decision: { said: 'yes or no to the quote', short: 'their answer' },
  newQuote: { said: 'make a new quote', row: 'A new quote: the last one is no longer valid' },
  proof: { said: 'send the proof' },
  newProof: { said: 'send a new proof' },
  approval: { said: 'approval of the proof', short: 'their yes to the proof' },
  deposit: { said: 'deposit', short: 'their deposit' },
  orderBlanks: { said: 'order the blanks' },
  blanks: { said: 'blanks are on the way', short: 'blanks on their way' },
  print: { said: 'print the sheets', short: 'print' },
  press: { said: 'press' },
  check: { said: 'check every piece', short: 'check' },
  pack: { said: 'pack' },
  askBalance: { said: 'send the invoice' },
  balance: { said: 'balance', short: 'their balance' },
  remind: { said: 'ask for the balance again' },
  deliver: { said: 'hand it over' },
  close: { said: 'close the order', short: 'close it' },
  held: { said: 'it is on hold', short: 'on hold' },
  over: { said: 'it is over', short: 'over' },
};

export const waitSaid = (why: WaitsFor): string => names[why].said;

export const waitShort = (why: WaitsFor): string => names[why].short ?? names[why].said;

export const waitRow = (why: WaitsFor): string => names[why].row ?? withCapital(names[why].said);
