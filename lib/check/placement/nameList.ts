import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import { linePlaces } from '@/lib/job/places';
import { namesOfList } from '@/lib/names/nameListText';
import { personKey } from '@/lib/names/personKey';

/** ART-12: as many names as pieces; a name that stands twice may be a slip. */
const count: Rule = ({ resolved }) =>
  linePlaces(resolved).flatMap((place) => {
    const { line } = place.line;
    const names = namesOfList(line.nameList);
    const pieces = line.quantities.reduce((sum, { quantity }) => sum + quantity, 0);
    if (names.length === 0 || names.length === pieces) return [];
    return [
      makeFinding({
        id: 'ART-12',
        severity: 'stop',
        variant: 'count',
        where: place.where('nameList'),
        found: { value: names.length, unit: 'names' },
        limit: { value: pieces, unit: 'pieces' },
        facts: { line: line.name, names: names.length, pieces },
      }),
    ];
  });

const twice: Rule = ({ resolved }) =>
  linePlaces(resolved).flatMap((place) => {
    const { line } = place.line;
    const seen = new Map<string, number>();
    for (const name of namesOfList(line.nameList)) {
      const key = personKey(name);
      seen.set(key, (seen.get(key) ?? 0) + 1);
    }
    const repeated = [...new Set(namesOfList(line.nameList))].filter(
      (name) => (seen.get(personKey(name)) ?? 0) > 1,
    );
    const [first] = repeated;
    if (first === undefined) return [];
    return [
      makeFinding({
        id: 'ART-12',
        severity: 'caution',
        variant: 'twice',
        where: place.where('nameList'),
        facts: { line: line.name, name: first, others: repeated.length - 1 },
      }),
    ];
  });

export const nameListRules: readonly Rule[] = [count, twice];
