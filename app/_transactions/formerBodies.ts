import type { BackendTx } from '@/app/_backend/backend';
import { readBody } from '@/lib/stored/readBody';
import type { KindReading } from '@/lib/stored/registry';
import { stepContentSchema } from '@/lib/stored/step';

/** @returns what a document held before and after each step of the history, the latest step first. */
export async function formerBodies<Body>(
  tx: BackendTx,
  id: string,
  entry: KindReading<Body>,
): Promise<readonly Body[]> {
  const contents = (await tx.all('contents')).flatMap((row) => {
    const content = stepContentSchema.safeParse(row);
    return content.success ? [content.data] : [];
  });
  return contents
    .toSorted((one, other) => other.seq - one.seq)
    .flatMap(({ changes }) => changes.filter((change) => change.id === id))
    .flatMap(({ before, after }) => [after, ...(before === null ? [] : [before])])
    .flatMap(({ body, version }) => {
      const read = readBody(body, version, entry);
      return read.ok ? [read.value] : [];
    });
}
