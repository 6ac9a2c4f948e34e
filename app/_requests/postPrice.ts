import type { WrittenAnswer } from './answerText';
import { MOST_WORK_MS } from './priceInThread';
import { LARGEST_BODY_BYTES, readBody } from './readBody';
import type { PoolAnswer } from './threadPool';

export type PriceText = (text: string, today: string) => Promise<PoolAnswer<WrittenAnswer>>;

/**
 * The answer to `POST /api/price`: findings, layout, cost sheet and prices, or a sentence that says why not.
 *
 * @param price works out the answer to the text of a request
 */
export async function postPrice(request: Request, price: PriceText): Promise<Response> {
  if (isFromElsewhere(request)) return refuse(403, elsewhere);
  const body = await readBody(request);
  switch (body.kind) {
    case 'tooLarge':
      return refuse(413, `The request is larger than ${LARGEST_BODY_BYTES} bytes. Send one job at a time.`);
    case 'brokenOff':
      return refuse(400, 'The request broke off before its end. Nothing was priced. Send it again.');
    case 'text':
      return respond(await price(body.text, new Date().toISOString().slice(0, 10)));
    default:
      return body satisfies never;
  }
}

const elsewhere =
  'The request comes from a page of another site, and prices are worked out for this one only. Nothing was priced. ' +
  'Send it from a program, such as curl, or from a page of this site.';

const tooLong =
  `The job took longer than ${MOST_WORK_MS / 1000} seconds to work out and was stopped, so that others get their ` +
  'answer. Nothing was priced. Send fewer lines at a time, give placements fewer print sizes, or set "gang" to ' +
  '"apart". The command `npm run -s price -- FILE.json` takes as long as it needs.';

const busy = 'The server is working on other jobs. Nothing was priced. Send the request again in a second.';

const broken =
  'The server failed at this request, and the fault is not yours. Nothing was priced. Send it again, or use the ' +
  'command `npm run -s price -- FILE.json`.';

function respond(answer: PoolAnswer<WrittenAnswer>): Response {
  switch (answer.kind) {
    case 'answered':
      return new Response(answer.answer.body, {
        status: answer.answer.status,
        headers: { ...noStore, 'Content-Type': 'application/json' },
      });
    case 'tooLong':
      return refuse(503, tooLong);
    case 'busy':
      return refuse(503, busy, { 'Retry-After': '1' });
    case 'failed':
      return refuse(500, broken);
    default:
      return answer satisfies never;
  }
}

/**
 * Browsers say of every request where it comes from, and no page can change that; programs say nothing. Any page the
 * maker has open could otherwise send work to this machine.
 */
function isFromElsewhere({ headers }: Request): boolean {
  const site = headers.get('sec-fetch-site');
  return site !== null && site !== 'same-origin' && site !== 'none';
}

const noStore = { 'Cache-Control': 'no-store' };

const refuse = (status: number, error: string, headers: Readonly<Record<string, string>> = {}): Response =>
  Response.json({ error }, { status, headers: { ...noStore, ...headers } });
