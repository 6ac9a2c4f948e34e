import { answerRequest } from '@/app/_requests/answerRequest';
import { LARGEST_BODY_BYTES, readBody } from '@/app/_requests/readBody';

/** Documents of one job in, findings, layout, cost sheet and prices out. Nothing is kept. */
export async function POST(request: Request): Promise<Response> {
  const body = await readBody(request);
  switch (body.kind) {
    case 'tooLarge':
      return refuse(413, `The request is larger than ${LARGEST_BODY_BYTES} bytes. Send one job at a time.`);
    case 'notJson':
      return refuse(
        400,
        `The request is not JSON: ${body.why}. Nothing was priced. Send the documents of one job.`,
      );
    case 'json': {
      const { kind, ...answer } = answerRequest(body.value, new Date().toISOString().slice(0, 10));
      return Response.json(answer, { status: kind === 'unusable' ? 422 : 200, headers: noStore });
    }
    default:
      return body satisfies never;
  }
}

const noStore = { 'Cache-Control': 'no-store' };

const refuse = (status: number, message: string): Response =>
  Response.json({ error: message }, { status, headers: noStore });
