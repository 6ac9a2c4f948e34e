import type { AnswerWords } from '@/app/_words/docket/answerWords';
import { spelledNumber, withCapital } from '@/app/_words/spelledNumber';
import type { OrderTurn } from '@/lib/orders/board/turnOf';
import { type WaitsFor, waitRow, waitSaid } from './waitNames';

/** What comes once the customer has done their part. */
function thenWords(why: WaitsFor, isBought: boolean): string | undefined {
  if (why === 'decision') return ', then proof and deposit';
  if (why === 'balance') return ', then it is done';
  if (why === 'approval' || why === 'deposit') return isBought ? ', then you go on' : ', then you buy';
  return undefined;
}

/**
 * @param who the customer's person, as rows name them
 * @param over why it is over
 * @param isBought blanks are ordered
 */
export function waitAnswer(
  { turn, waits }: Pick<OrderTurn, 'turn' | 'waits'>,
  who: string,
  over: string,
  isBought: boolean,
): AnswerWords {
  const own = waits.filter((one) => one.turn === turn);
  const [first] = own;
  if (first === undefined) return { key: 'Nothing' };
  if (turn === 'you') {
    const acts = [...new Set(own.map(({ why }) => waitSaid(why)))];
    const key = `You ${new Intl.ListFormat('en').format(acts.slice(0, 3))}`;
    return waits.some((one) => one.turn === 'customer' && one.why !== 'openItem')
      ? { key: `${key},`, after: ` and ${who} has to answer` }
      : { key };
  }
  if (turn === 'customer') {
    const key = `${withCapital(spelledNumber(own.length))} ${own.length === 1 ? 'answer' : 'answers'} from ${who}`;
    const next = own.map(({ why }) => thenWords(why, isBought)).find((one) => one !== undefined);
    return next === undefined ? { key } : { key: `${key},`, after: next.slice(1) };
  }
  if (first.why === 'over') return { key: over };
  return first.why === 'blanks'
    ? { key: 'The blanks,', after: ' which are on the way' }
    : { key: waitRow(first.why) };
}
