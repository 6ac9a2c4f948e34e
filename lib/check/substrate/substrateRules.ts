import { celsiusOf, dialTemperature } from '@/lib/check/celsius';
import { isScaleSlip } from '@/lib/check/isScaleSlip';
import { polyesterShare } from '@/lib/check/polyesterShare';
import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { LinePlace, PlacementPlace } from '@/lib/job/places';
import { linePlaces, placementPlaces } from '@/lib/job/places';
import type { Finding } from '@/shared/finding';
import { textileKinds } from '@/shared/schemas/blank';
import { thresholds } from '@/shared/tables/thresholds';

/** Sums of shares carry the noise of binary fractions: 0.35 + 0.3 is not quite 0.65. */
const SHARE_NOISE = 1e-9;

const natural = ['cotton', 'wool', 'viscose'];

/** SUB-01, SUB-02: how much of the cloth can hold the dye. Textiles only. */
const fibreContent: Rule = ({ resolved }) => linePlaces(resolved).flatMap(judgeFibres);

function judgeFibres({ line: { blank }, whereBlank }: LinePlace): readonly Finding[] {
  if (!textileKinds.includes(blank.kind)) return [];
  const { polyester } = thresholds;
  const share = polyesterShare(blank) + SHARE_NOISE;
  const named = blank.fibres.filter((fibre) => fibre.share > 0);
  const draft = {
    id: 'SUB-01',
    where: whereBlank('fibres'),
    found: { value: polyesterShare(blank), unit: 'share' },
    limit: { value: polyester.full.value, unit: 'share' },
    facts: { blank: blank.name, polyester: polyesterShare(blank), least: polyester.full.value },
  } as const;
  if (named.length === 0) {
    return [makeFinding({ ...draft, severity: 'stop', variant: 'unknown', found: null })];
  }
  if (named.every(({ fibre }) => natural.includes(fibre))) {
    const names = named.map(({ fibre }) => fibre).join(', ');
    return [
      makeFinding({
        ...draft,
        id: 'SUB-02',
        severity: 'stop',
        waivable: false,
        facts: { blank: blank.name, fibres: names },
      }),
    ];
  }
  if (share < polyester.least.value) {
    return [makeFinding({ ...draft, severity: 'stop', variant: 'tooLittle', waivable: false })];
  }
  if (share < polyester.faded.value) return [makeFinding({ ...draft, severity: 'stop', variant: 'faded' })];
  const sum = blank.fibres.reduce((total, fibre) => total + fibre.share, 0);
  if (Math.abs(sum - 1) > polyester.labelTolerance.value + SHARE_NOISE) {
    return [makeFinding({ ...draft, severity: 'caution', variant: 'sum', facts: { ...draft.facts, sum } })];
  }
  return share < polyester.full.value
    ? [makeFinding({ ...draft, severity: 'caution', variant: 'muted' })]
    : [];
}

/** SUB-04: sublimation inks are see-through, so the cloth tints the picture. Textiles only. */
const clothColour: Rule = ({ resolved }) =>
  linePlaces(resolved).flatMap(({ line: { blank }, whereBlank }) => {
    if (!textileKinds.includes(blank.kind)) return [];
    const { colour: limits } = thresholds;
    const { L: lightness, a, b, name } = blank.colour;
    const chroma = Math.hypot(a, b);
    const tell = (severity: Finding['severity'], variant: string, isChroma = false) => [
      makeFinding({
        id: 'SUB-04',
        severity,
        variant,
        where: whereBlank('colour'),
        found: isChroma ? { value: chroma, unit: 'C*' } : { value: lightness, unit: 'L*' },
        limit: isChroma
          ? { value: limits.tintChroma.value, unit: 'C*' }
          : { value: limits.whiteLightness.value, unit: 'L*' },
        facts: { blank: blank.name, colour: name, lightness, chroma },
      }),
    ];
    if (lightness < limits.darkLightness.value) return tell('stop', 'dark');
    if (chroma > limits.tintChroma.value) return tell('caution', 'tint', true);
    if (lightness < limits.nearWhiteLightness.value) return tell('caution', 'tint');
    const white = lightness >= limits.whiteLightness.value && chroma <= limits.whiteChroma.value;
    return white ? [] : tell('note', 'nearWhite');
  });

/** SUB-06: a hard good takes dye through its coating only. A mat may have a face of cloth. */
const coating: Rule = ({ resolved }) =>
  linePlaces(resolved).flatMap(({ line: { blank }, whereBlank }) => {
    if (textileKinds.includes(blank.kind) || blank.coating === 'coated') return [];
    if (blank.kind === 'mat' && blank.coating === 'cloth') return [];
    return [
      makeFinding({
        id: 'SUB-06',
        severity: 'stop',
        where: whereBlank('coating'),
        variant: blank.coating === 'uncoated' ? 'uncoated' : 'unknown',
        found: blank.coating,
        facts: { blank: blank.name },
      }),
    ];
  });

/** SUB-09: the press is set hotter than the blank's maker allows, or close to it. */
const safeTemperature: Rule = ({ resolved }) => placementPlaces(resolved).flatMap(judgeHeat);

function judgeHeat(place: PlacementPlace): readonly Finding[] {
  const { blank } = place.line;
  const { temperature } = place.placed.placement.recipe;
  const most = blank.maxTemperatureC;
  if (most === null || isScaleSlip(temperature)) return [];
  const celsius = celsiusOf(temperature);
  const safe = most - thresholds.safeTemperature.near.value;
  if (celsius <= safe + 1e-9) return [];
  const proposed = dialTemperature(safe, temperature.unit, 'down');
  return [
    makeFinding({
      id: 'SUB-09',
      severity: celsius > most + 1e-9 ? 'stop' : 'caution',
      variant: celsius > most + 1e-9 ? 'over' : 'near',
      where: place.where('recipe', 'temperature'),
      found: { value: celsius, unit: '°C' },
      limit: { value: most, unit: '°C' },
      facts: { blank: blank.name, temperatureC: celsius, mostC: most },
      fix:
        proposed.value <= 0
          ? null
          : {
              label: 'setTemperature',
              facts: { temperatureC: celsiusOf(proposed) },
              changes: [place.change(['recipe', 'temperature'], proposed)],
            },
    }),
  ];
}

/** SUB-12: seams, zips and buttons hold the platen off the print. */
const raisedParts: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place) => {
    const { placement } = place.placed;
    if (placement.raisedParts === 'none') return [];
    const draft = {
      id: 'SUB-12',
      where: place.where('raisedParts'),
      found: placement.raisedParts,
      facts: { placement: placement.name },
    } as const;
    if (placement.raisedParts === 'insidePrint') {
      return [makeFinding({ ...draft, severity: 'stop', variant: 'inside' })];
    }
    if (placement.recipe.reliefFromRaisedParts) {
      return [makeFinding({ ...draft, severity: 'note', variant: 'relieved' })];
    }
    return [
      makeFinding({
        ...draft,
        severity: 'caution',
        variant: 'bare',
        fix: {
          label: 'planRelief',
          facts: {},
          changes: [place.change(['recipe', 'reliefFromRaisedParts'], true)],
        },
      }),
    ];
  });

export const substrateRules: readonly Rule[] = [
  fibreContent,
  clothColour,
  coating,
  safeTemperature,
  raisedParts,
];
