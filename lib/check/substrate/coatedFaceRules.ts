import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { LinePlace } from '@/lib/job/places';
import { linePlaces } from '@/lib/job/places';
import type { Blank } from '@/shared/schemas/blank';
import type { Workshop } from '@/shared/schemas/workshop';
import { testPress } from './gentlePress';

/** Kinds of which one face may be coated and the other bare. */
const facedKinds: readonly Blank['kind'][] = ['panel', 'tile', 'small'];

/** SUB-07: which face is coated. Told once a blank. */
const coatedFace: Rule = ({ resolved }) =>
  firstPlaces(linePlaces(resolved)).flatMap(({ line: { blank, line }, whereBlank }) =>
    facedKinds.includes(blank.kind) && blank.coating === 'coated' && blank.traits.coatedFace === 'unknown'
      ? [
          makeFinding({
            id: 'SUB-07',
            severity: 'caution',
            where: whereBlank('traits', 'coatedFace'),
            facts: { blank: blank.name },
            fix: {
              label: 'faceMarked',
              facts: {},
              changes: [
                { document: 'blank', id: line.blankId, path: ['traits', 'coatedFace'], value: 'marked' },
              ],
            },
          }),
        ]
      : [],
  );

/** SUB-08: a soft coating washes out, so it may not be promised to bear a dishwasher. Told once a blank. */
const coatingHardness: Rule = ({ resolved }) =>
  firstPlaces(linePlaces(resolved)).flatMap(({ line: { blank }, whereBlank }) => {
    const { coatingHardness: hardness } = blank.traits;
    if (blank.kind !== 'drinkware' || blank.coating !== 'coated' || hardness === 'hard') return [];
    const draft = {
      id: 'SUB-08',
      where: whereBlank('traits', 'coatingHardness'),
      found: hardness,
      facts: { blank: blank.name },
    } as const;
    if (hardness === 'unknown') return [makeFinding({ ...draft, severity: 'note', variant: 'unknown' })];
    if (!promisesDishwasher(resolved.workshop)) return [];
    return [
      makeFinding({
        ...draft,
        severity: 'stop',
        variant: 'claim',
        fix: {
          label: 'dropClaim',
          facts: {},
          changes: [
            {
              document: 'workshop',
              path: ['habits', 'claims'],
              value: resolved.workshop.habits.claims.filter(({ claim }) => claim !== 'dishwasherSafe'),
            },
          ],
        },
      }),
    ];
  });

/** SUB-13: another lot than the one a recipe has worked on, or the first. Told once a blank. */
const lot: Rule = ({ resolved }) => {
  const places = linePlaces(resolved);
  return firstPlaces(places).flatMap((place) => {
    const { blank, line } = place.line;
    const { lot: now, provenLot } = blank.traits;
    if (now === '' || now === provenLot) return [];
    const draft = { id: 'SUB-13', where: place.whereBlank('traits', 'lot'), found: now } as const;
    if (provenLot !== '') {
      return [
        makeFinding({
          ...draft,
          severity: 'note',
          variant: 'otherLot',
          limit: provenLot,
          facts: { blank: blank.name, lot: now, provenLot },
          fix: {
            label: 'provenHere',
            facts: {},
            changes: [{ document: 'blank', id: line.blankId, path: ['traits', 'provenLot'], value: now }],
          },
        }),
      ];
    }
    const ofBlank = places.filter((other) => other.line.line.blankId === line.blankId);
    if (ofBlank.some((other) => testPress(other).length === 0)) return [];
    return [
      makeFinding({
        ...draft,
        severity: 'caution',
        variant: 'first',
        facts: { blank: blank.name, lot: now },
        fix: { label: 'planTest', facts: {}, changes: testPress(place) },
      }),
    ];
  });
};

/** The first line of each blank. */
const firstPlaces = (places: readonly LinePlace[]): readonly LinePlace[] =>
  places.filter(
    (place, index) =>
      places.findIndex((other) => other.line.line.blankId === place.line.line.blankId) === index,
  );

const promisesDishwasher = ({ habits }: Workshop): boolean =>
  habits.claims.some(({ claim, proven }) => claim === 'dishwasherSafe' && !proven);

export const coatedFaceRules: readonly Rule[] = [coatedFace, coatingHardness, lot];
