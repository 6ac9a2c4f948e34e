import { wantedChildSizes } from '@/lib/check/children/wantedChildSizes';
import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import { linePlaces } from '@/lib/job/places';
import type { Finding } from '@/shared/finding';
import { thresholds } from '@/shared/tables/thresholds';
import { curveShares } from './curveShares';

/** QTY-03: fewer pieces than the workshop takes an order for. Stock is made in any number. */
const leastOrder: Rule = ({ resolved: { job, lines, workshop } }) => {
  const { leastPieces: least } = workshop.habits;
  const pieces = lines.flatMap(({ sizes }) => sizes).reduce((sum, { quantity }) => sum + quantity, 0);
  if (least === null || job.madeFor !== 'order' || pieces === 0 || pieces >= least) return [];
  return [
    makeFinding({
      id: 'QTY-03',
      severity: 'caution',
      where: { document: 'job', path: ['lines'] },
      found: { value: pieces, unit: 'pieces' },
      limit: { value: least, unit: 'pieces' },
      facts: { pieces, least },
    }),
  ];
};

/** QTY-05: the size whose share is furthest from that of the crowd the maker chose. */
const sizeMix: Rule = ({ resolved }) =>
  linePlaces(resolved).flatMap((place): readonly Finding[] => {
    const { line, sizes } = place.line;
    const { mixFrom, mixOff } = thresholds.quantity;
    const pieces = sizes.reduce((sum, { quantity }) => sum + quantity, 0);
    if (line.audience === null || pieces < mixFrom.value) return [];
    const { audience } = line;
    const [worst] = curveShares(place.line, audience).toSorted(
      (a, b) => Math.abs(b.share - b.usual) - Math.abs(a.share - a.usual),
    );
    if (worst === undefined || Math.abs(worst.share - worst.usual) <= mixOff.value + 1e-9) return [];
    return [
      makeFinding({
        id: 'QTY-05',
        severity: 'note',
        variant: worst.share > worst.usual ? 'more' : 'fewer',
        where: { ...place.where('audience'), size: worst.size },
        found: { value: worst.share, unit: 'share' },
        limit: { value: worst.usual, unit: 'share' },
        facts: { line: line.name, ...worst, audience },
        fix: { label: 'mixIsMeant', facts: {}, changes: [place.change(['audience'], null)] },
      }),
    ];
  });

/** QTY-06: sizes of children on something that is not said to be for children. */
const youthSizes: Rule = ({ resolved }) =>
  linePlaces(resolved).flatMap((place) => {
    const { blank, line } = place.line;
    const names = [...wantedChildSizes(place.line).keys()];
    if (blank.forChildren === true || names.length === 0) return [];
    const sizes = names.join(', ');
    return [
      makeFinding({
        id: 'QTY-06',
        severity: 'caution',
        where: place.where('quantities'),
        found: sizes,
        facts: { line: line.name, blank: blank.name, sizes },
        fix: {
          label: 'isForChildren',
          facts: {},
          changes: [{ document: 'blank', id: line.blankId, path: ['forChildren'], value: true }],
        },
      }),
    ];
  });

export const orderRules: readonly Rule[] = [leastOrder, sizeMix, youthSizes];
