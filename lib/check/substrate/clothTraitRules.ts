import { polyesterShare } from '@/lib/check/polyesterShare';
import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { LinePlace } from '@/lib/job/places';
import { linePlaces, placementPlaces } from '@/lib/job/places';
import type { Finding } from '@/shared/finding';
import { textileKinds } from '@/shared/schemas/blank';
import { thresholds } from '@/shared/tables/thresholds';
import { gentlePress, testPress } from './gentlePress';

/** Sums of shares carry the noise of binary fractions. */
const SHARE_NOISE = 1e-9;

/** SUB-03: fibres that stretch, glaze or melt under the press. */
const softFibres: Rule = ({ resolved }) =>
  clothPlaces(linePlaces(resolved)).flatMap(({ line: { blank }, whereBlank }) => {
    const shareOf = (...names: readonly string[]) =>
      blank.fibres.filter(({ fibre }) => names.includes(fibre)).reduce((sum, { share }) => sum + share, 0);
    const tell = (severity: Finding['severity'], variant: 'stretch' | 'lowMelt', share: number) => {
      const most = (variant === 'stretch' ? thresholds.fibres.stretch : thresholds.fibres.lowMelt).value;
      if (share <= most + SHARE_NOISE) return [];
      return [
        makeFinding({
          id: 'SUB-03',
          severity,
          variant,
          where: whereBlank('fibres'),
          found: { value: share, unit: 'share' },
          limit: { value: most, unit: 'share' },
          facts: { blank: blank.name, share, most },
        }),
      ];
    };
    return [
      ...tell('stop', 'lowMelt', shareOf('nylon', 'acrylic', 'acetate')),
      ...tell('caution', 'stretch', shareOf('elastane')),
    ];
  });

/** SUB-10: finishes that mark and bleed sooner are pressed shorter and lighter, after a test. */
const delicateFinish: Rule = ({ resolved }) =>
  clothPlaces(linePlaces(resolved)).flatMap((place) => {
    const { blank } = place.line;
    const isPerformance = blank.traits.finish === 'performance' || blank.substrate === 'performancePolyester';
    if (!isPerformance && blank.traits.finish !== 'heather') return [];
    const draft = { id: 'SUB-10', where: place.whereBlank('traits', 'finish') } as const;
    const seconds = thresholds.steps.performanceDwell.value;
    const changes = [...gentlePress(place, isPerformance ? seconds : null), ...testPress(place)];
    const of = { blank: blank.name };
    if (changes.length === 0) {
      return [makeFinding({ ...draft, severity: 'note', variant: 'followed', facts: of })];
    }
    return [
      makeFinding({
        ...draft,
        severity: 'caution',
        ...(isPerformance
          ? ({ variant: 'performance', facts: { ...of, seconds } } as const)
          : ({ variant: 'heather', facts: of } as const)),
        fix: isPerformance
          ? { label: 'performanceWay', facts: { seconds }, changes }
          : { label: 'gentleTest', facts: {}, changes },
      }),
    ];
  });

/** SUB-11: the cloth's own dye may move. Cloth that nobody described is taken for dyed where its colour is strong. */
const ownDye: Rule = ({ resolved }) =>
  clothPlaces(linePlaces(resolved)).flatMap((place) => {
    const { blank, placements } = place.line;
    const { dyed } = blank.traits;
    const isColoured = Math.hypot(blank.colour.a, blank.colour.b) > thresholds.colour.tintChroma.value;
    if (polyesterShare(blank) <= 0 || dyed === false || (dyed === null && !isColoured)) return [];
    const changes = [
      ...placements.flatMap(({ placement }, index) =>
        placement.recipe.protectivePaper === 'freshPlain'
          ? []
          : [place.change(['placements', index, 'recipe', 'protectivePaper'], 'freshPlain')],
      ),
      ...testPress(place),
    ];
    const isFollowed = changes.length === 0;
    return [
      makeFinding({
        id: 'SUB-11',
        severity: isFollowed ? 'note' : 'caution',
        variant: isFollowed ? 'followed' : dyed === true ? 'dyed' : 'coloured',
        where: place.whereBlank('traits', 'dyed'),
        facts: { blank: blank.name, colour: blank.colour.name },
        fix: isFollowed ? null : { label: 'freshPaperTest', facts: {}, changes },
      }),
    ];
  });

/** SUB-14: dye gas goes through the printed layer of a bag and marks the one behind. */
const behindLayer: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place) => {
    const { blank } = place.line;
    const { placement, totalCoverage } = place.placed;
    const { layers } = blank.traits;
    if ((blank.kind !== 'bag' && blank.kind !== 'cushion') || layers === 'one') return [];
    const limit = thresholds.throughInk.value;
    if (placement.recipe.barrierPaper || totalCoverage.value < limit - SHARE_NOISE) return [];
    return [
      makeFinding({
        id: 'SUB-14',
        severity: layers === 'two' ? 'caution' : 'note',
        variant: layers,
        where: place.where('recipe', 'barrierPaper'),
        found: { value: totalCoverage.value, unit: 'share' },
        limit: { value: limit, unit: 'share' },
        facts: { blank: blank.name, placement: placement.name, coverage: totalCoverage.value },
        fix: {
          label: 'planBarrier',
          facts: {},
          changes: [place.change(['recipe', 'barrierPaper'], true)],
        },
      }),
    ];
  });

const clothPlaces = (places: readonly LinePlace[]): readonly LinePlace[] =>
  places.filter(({ line }) => textileKinds.includes(line.blank.kind));

export const clothTraitRules: readonly Rule[] = [softFibres, delicateFinish, ownDye, behindLayer];
