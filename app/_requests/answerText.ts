import { answerRequest } from './answerRequest';
import { parseJson } from './readBody';

/** An answer of the API as it goes over the wire. */
export interface WrittenAnswer {
  readonly status: 200 | 400 | 422;
  /** JSON. */
  readonly body: string;
}

/**
 * The whole answer to the text of a request, from reading it to writing it out.
 *
 * @param today used where the request does not name its day, YYYY-MM-DD
 */
export function answerText(text: string, today: string): WrittenAnswer {
  const parsed = parseJson(text);
  if (parsed.kind === 'notJson') {
    const error = `The request is not JSON: ${parsed.why}. Nothing was priced. Send the documents of one job.`;
    return { status: 400, body: JSON.stringify({ error }) };
  }
  const { kind, ...answer } = answerRequest(parsed.value, today);
  return { status: kind === 'unusable' ? 422 : 200, body: JSON.stringify(answer) };
}
