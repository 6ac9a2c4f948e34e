import { wantedChildSizes } from '@/lib/check/children/wantedChildSizes';
import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { ResolvedJob } from '@/lib/job/checkedJob';
import type { LinePlace } from '@/lib/job/places';
import { linePlaces } from '@/lib/job/places';

/**
 * LAW-02: goods for children come under rules of their own. Told once for each blank that is said to be for
 * children, or of which a child's size is wanted; where the maker says that it is not for children, the size asks.
 */
const children: Rule = ({ resolved }) =>
  eachBlank(resolved).flatMap(({ place, childNames }) => {
    const { blank } = place.line;
    if (blank.forChildren !== true && childNames.length === 0) return [];
    return [
      makeFinding({
        id: 'LAW-02',
        severity: 'caution',
        where: place.whereBlank('forChildren'),
        ...(blank.forChildren === false
          ? ({ variant: 'denied', facts: { blank: blank.name, sizes: childNames.join(', ') } } as const)
          : ({ variant: 'meant', facts: { blank: blank.name } } as const)),
      }),
    ];
  });

/** Of these the rules speak whoever the goods are said to be for. */
const alwaysChildrens: readonly string[] = ['underThree', 'bib'];

/** LAW-03: sleepwear, bibs, cords, small parts, and anything for children under three. */
const childRisks: Rule = ({ resolved }) =>
  eachBlank(resolved).flatMap(({ place, babyNames }) => {
    const { blank } = place.line;
    const risks = (blank.traits.childRisks ?? []).filter(
      (risk) => blank.forChildren !== false || alwaysChildrens.includes(risk),
    );
    const draft = { id: 'LAW-03', where: place.whereBlank('traits', 'childRisks') } as const;
    const of = { blank: blank.name };
    if (risks.length > 0) {
      return [
        makeFinding({
          ...draft,
          severity: 'stop',
          variant: 'said',
          facts: { ...of, risks: risks.join(';') },
        }),
      ];
    }
    if (babyNames.length === 0) return [];
    const facts = { ...of, sizes: babyNames.join(', ') };
    // The maker's word against the name of a size: a question, and no stop.
    return blank.forChildren === false
      ? [makeFinding({ ...draft, severity: 'caution', variant: 'denied', facts })]
      : [makeFinding({ ...draft, severity: 'stop', variant: 'sizes', facts })];
  });

interface BlankOfJob {
  /** The first line that uses it. */
  readonly place: LinePlace;
  /** Wanted sizes of children, and those under three, over all its lines. */
  readonly childNames: readonly string[];
  readonly babyNames: readonly string[];
}

function eachBlank(resolved: ResolvedJob): readonly BlankOfJob[] {
  const places = linePlaces(resolved);
  return places.flatMap((place, index) => {
    const ofBlank = places.filter((other) => other.line.line.blankId === place.line.line.blankId);
    if (ofBlank[0] !== places[index]) return [];
    const sizes = ofBlank.flatMap(({ line }) => [...wantedChildSizes(line)]);
    const names = (only: readonly (readonly [string, string])[]) => [...new Set(only.map(([name]) => name))];
    return [
      { place, childNames: names(sizes), babyNames: names(sizes.filter(([, child]) => child === 'baby')) },
    ];
  });
}

export const childGoodsRules: readonly Rule[] = [children, childRisks];
