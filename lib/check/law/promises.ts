import { blanksPerPiece } from '@/lib/check/quantity/packs';
import type { Rule } from '@/lib/check/rule';
import { toldOnce } from '@/lib/check/toldOnce';
import { makeFinding } from '@/lib/findings/makeFinding';
import { blanksForConfidence } from '@/lib/job/blanksForConfidence';
import type { LinePlace } from '@/lib/job/places';
import { linePlaces, placementPlaces } from '@/lib/job/places';
import type { Finding } from '@/shared/finding';
import { thresholds } from '@/shared/tables/thresholds';

/** LAW-04: print where lips touch a cup. */
const lipZone: Rule = ({ resolved }) =>
  toldOnce(
    placementPlaces(resolved).flatMap((place): readonly Finding[] => {
      const { rim, name } = place.placed.placement;
      if (place.line.blank.kind !== 'drinkware') return [];
      if (rim.inside) {
        return [
          makeFinding({
            id: 'LAW-04',
            severity: 'stop',
            variant: 'inside',
            where: place.where('rim', 'inside'),
            facts: { placement: name },
            fix: { label: 'printOutside', facts: {}, changes: [place.change(['rim', 'inside'], false)] },
          }),
        ];
      }
      const limit = thresholds.lipZone;
      if (rim.belowMm === null || rim.belowMm >= limit.value - 1e-6) return [];
      return [
        makeFinding({
          id: 'LAW-04',
          severity: 'caution',
          variant: 'near',
          where: place.where('rim', 'belowMm'),
          found: { value: rim.belowMm, unit: 'mm' },
          limit: { value: limit.value, unit: 'mm' },
          facts: { placement: name, mm: rim.belowMm, wantedMm: limit.value },
          fix: {
            label: 'belowRim',
            facts: { mm: limit.value },
            changes: [place.change(['rim', 'belowMm'], limit.value)],
          },
        }),
      ];
    }),
  );

/** LAW-07: what buyers are promised, and nobody can prove yet. A dishwasher concerns cups only. */
const claims: Rule = ({ resolved: { workshop, lines } }) =>
  workshop.habits.claims.flatMap(({ claim, proven }, index) => {
    const cups = lines.filter(({ blank }) => blank.kind === 'drinkware');
    // A soft coating that is promised to bear it is stopped already.
    const isJudged = cups.length > 0 && cups.every(({ blank }) => blank.traits.coatingHardness !== 'soft');
    if (proven || (claim === 'dishwasherSafe' && !isJudged)) return [];
    return [
      makeFinding({
        id: 'LAW-07',
        severity: 'caution',
        where: { document: 'workshop', path: ['habits', 'claims', index] },
        found: claim,
        facts: { claim },
        fix: {
          label: 'claimProven',
          facts: {},
          changes: [{ document: 'workshop', path: ['habits', 'claims', index, 'proven'], value: true }],
        },
      }),
    ];
  });

/** LAW-08: blanks the customer brings are not replaced when one is spoiled. Told once a blank. */
const customersBlanks: Rule = ({ resolved }) => {
  const places = linePlaces(resolved);
  return places.flatMap((place, index) => {
    const { blank, line } = place.line;
    const ofBlank = places.filter((other) => other.line.line.blankId === line.blankId);
    if (blank.suppliedBy !== 'customer' || ofBlank[0] !== places[index]) return [];
    return [
      makeFinding({
        id: 'LAW-08',
        severity: 'caution',
        where: place.whereBlank('suppliedBy'),
        found: 'customer',
        facts: {
          blank: blank.name,
          spare: sparesOf(ofBlank),
          confidence: thresholds.spares.sure.value,
        },
      }),
    ];
  });
};

/** Blanks above the good pieces, over all lines that use the blank: the number QTY-08 asks for. */
const sparesOf = (places: readonly LinePlace[]): number =>
  places.reduce((sum, { line }) => {
    const chance = 1 / blanksPerPiece(line);
    // Broken counts are QTY-02's matter.
    const wanted = line.sizes.map(({ quantity }) => ({ pieces: Math.ceil(quantity), chance, price: 0 }));
    const { blanks } = blanksForConfidence(wanted, thresholds.spares.sure.value);
    return blanks.reduce((all, count, index) => all + count - (wanted[index]?.pieces ?? 0), sum);
  }, 0);

export const promiseRules: readonly Rule[] = [lipZone, claims, customersBlanks];
