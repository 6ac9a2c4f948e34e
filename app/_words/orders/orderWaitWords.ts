import type { AnswerWords } from '@/app/_words/docket/answerWords';
import { spelledNumber, withCapital } from '@/app/_words/spelledNumber';
import type { OrderTurn } from '@/lib/orders/board/turnOf';

export type WaitsFor = OrderTurn['waits'][number]['why'];

/** What it waits for, as a row names it; `deposit`, `balance`, `approval` and open items say more. */
export const waitWords: Readonly<Record<WaitsFor, string>> = {
  answer: 'Answer with a quote',
  openItem: 'Something still open',
  decision: 'Yes or no to the quote',
  newQuote: 'A new quote: the last one is no longer valid',
  proof: 'Send a proof sheet',
  newProof: 'Send a new proof sheet',
  approval: 'Approval of the proof',
  deposit: 'Deposit',
  orderBlanks: 'Order the blanks',
  blanks: 'Blanks are on the way',
  print: 'Print the sheets',
  press: 'Press',
  check: 'Check every piece',
  pack: 'Pack',
  askBalance: 'Send the invoice',
  balance: 'Balance',
  remind: 'Ask for the balance again',
  deliver: 'Hand it over',
  close: 'Note what it took, and close it',
  held: 'It is on hold',
  over: 'It is over',
};

/** The same in the answer line, after “You:”. */
const yourTurn: Readonly<Partial<Record<WaitsFor, string>>> = {
  answer: 'answer with a quote',
  openItem: 'settle what is open',
  newQuote: 'make a new quote',
  proof: 'send the proof',
  newProof: 'send a new proof',
  orderBlanks: 'order the blanks',
  print: 'print the sheets',
  press: 'press',
  check: 'check every piece',
  pack: 'pack',
  askBalance: 'send the invoice',
  remind: 'ask for the balance again',
  deliver: 'hand it over',
  close: 'note what it took',
};

/** What comes once the customer has done their part. */
const then: Readonly<Partial<Record<WaitsFor, string>>> = {
  decision: ', then proof and deposit',
  approval: ', then you buy',
  deposit: ', then you buy',
  balance: ', then it is done',
};

/** @param who the customer's person, as rows name them */
export function waitAnswer(
  { turn, waits }: Pick<OrderTurn, 'turn' | 'waits'>,
  who: string,
  over: string,
): AnswerWords {
  const own = waits.filter((one) => one.turn === turn);
  const [first] = own;
  if (first === undefined) return { key: 'Nothing' };
  if (turn === 'you') {
    const acts = [...new Set(own.map(({ why }) => yourTurn[why] ?? waitWords[why]))];
    const key = `You ${new Intl.ListFormat('en').format(acts.slice(0, 3))}`;
    return waits.some((one) => one.turn === 'customer')
      ? { key: `${key},`, after: ` and ${who} has to answer` }
      : { key };
  }
  if (turn === 'customer') {
    const key = `${withCapital(spelledNumber(own.length))} ${own.length === 1 ? 'answer' : 'answers'} from ${who}`;
    const next = own.map(({ why }) => then[why]).find((one) => one !== undefined);
    return next === undefined ? { key } : { key: `${key},`, after: next.slice(1) };
  }
  if (first.why === 'over') return { key: over };
  return first.why === 'blanks'
    ? { key: 'The blanks,', after: ' which are on the way' }
    : { key: waitWords[first.why] };
}
