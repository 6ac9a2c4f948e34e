import { toJSONSchema } from 'zod';
import { refuseMethod, tellMethods } from '@/app/_requests/refuseMethod';
import { artworkSchema } from '@/shared/schemas/artwork';
import { blankSchema } from '@/shared/schemas/blank';
import { jobSchema } from '@/shared/schemas/job';
import { jobInputSchema } from '@/shared/schemas/request';
import { workshopSchema } from '@/shared/schemas/workshop';

/** JSON Schema of the request and of each document in it, as they may be sent. */
export function GET(): Response {
  const schemas = {
    request: jobInputSchema,
    workshop: workshopSchema,
    blank: blankSchema,
    artwork: artworkSchema,
    job: jobSchema,
  };
  return Response.json(
    Object.fromEntries(
      Object.entries(schemas).map(([name, schema]) => [
        name,
        toJSONSchema(schema, { io: 'input', unrepresentable: 'any' }),
      ]),
    ),
  );
}

const methods = 'GET, HEAD, OPTIONS';
export const OPTIONS = tellMethods(methods);

const refuse = refuseMethod(methods, 'Read the schemas with GET.');

export { refuse as DELETE, refuse as PATCH, refuse as POST, refuse as PUT };
