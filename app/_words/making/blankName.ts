import type { RunStandard } from '@/shared/schemas/making/runPapers';
import { goneName, goneNames } from './goneNames';

/**
 * What a blank is called wherever a run tells of it: by the catalogue; removed from it, by the standard frozen last.
 *
 * @param standards in the store's one order
 */
export function blankName(
  blanks: Readonly<Record<string, { readonly name: string }>>,
  standards: readonly { readonly body: Pick<RunStandard, 'works'> }[],
  blankId: string,
): string {
  const here = blanks[blankId]?.name;
  if (here !== undefined) return here;
  const frozen = standards
    .flatMap(({ body }) => body.works.flatMap(({ lines }) => lines))
    .findLast((line) => line.blankId === blankId)?.blankName;
  return frozen === undefined ? goneNames.blank : goneName(frozen);
}
