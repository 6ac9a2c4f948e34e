import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { LinePlace } from '@/lib/job/places';
import { linePlaces } from '@/lib/job/places';
import type { Change, Finding, Where } from '@/shared/finding';
import type { Blank } from '@/shared/schemas/blank';
import type { Recipe } from '@/shared/schemas/job';
import { thresholds } from '@/shared/tables/thresholds';
import { coolsByFan, coolsInPlace, needsLintRoll } from './stepNeeds';

/** The recipes of a line that leave a step out, and the way to plan it in all of them. */
interface Left {
  readonly line: string;
  readonly where: Where;
  readonly recipe: Recipe;
  readonly plan: (value: unknown) => readonly Change[];
}

/**
 * A rule about one step, told once a line. A step nobody has spoken of is asked, see `jobQuestions`, and no finding.
 *
 * @param isLeftOut whether a recipe says that the step is not taken
 */
const stepRule =
  (
    key: keyof Recipe['steps'],
    applies: (blank: Blank) => boolean,
    isLeftOut: (steps: Recipe['steps']) => boolean,
    tell: (left: Left) => Finding,
  ): Rule =>
  ({ resolved }) =>
    linePlaces(resolved).flatMap((place) => {
      const left = applies(place.line.blank) ? leftOut(place, key, isLeftOut) : null;
      return left === null ? [] : [tell(left)];
    });

function leftOut(
  { line, where, change }: LinePlace,
  key: keyof Recipe['steps'],
  isLeftOut: (steps: Recipe['steps']) => boolean,
): Left | null {
  const lacking = line.placements.flatMap(({ placement }, index) =>
    isLeftOut(placement.recipe.steps)
      ? [{ placement, path: ['placements', index, 'recipe', 'steps', key] }]
      : [],
  );
  const [first] = lacking;
  if (first === undefined) return null;
  return {
    line: line.line.name,
    where: { ...where(...first.path), placementId: first.placement.id },
    recipe: first.placement.recipe,
    plan: (value) => lacking.map(({ path }) => change(path, value)),
  };
}

/** REC-07: cloth is rolled for lint before the transfer is laid. */
const lintRoll = stepRule(
  'lintRoll',
  needsLintRoll,
  ({ lintRoll: planned }) => planned === false,
  (left) =>
    makeFinding({
      id: 'REC-07',
      severity: 'caution',
      where: left.where,
      facts: { line: left.line },
      fix: { label: 'planLintRoll', facts: {}, changes: left.plan(true) },
    }),
);

/** REC-08: the transfer is taped on all four edges. */
const tape = stepRule(
  'tapeEdges',
  () => true,
  ({ tapeEdges }) => tapeEdges === false,
  (left) =>
    makeFinding({
      id: 'REC-08',
      severity: 'caution',
      where: left.where,
      facts: { line: left.line },
      fix: { label: 'planTape', facts: {}, changes: left.plan(true) },
    }),
);

const wanted = thresholds.steps.cool.value;

/** REC-09: cloth cools under its transfer, hard goods by a fan. */
const coolInPlace = stepRule(
  'coolSeconds',
  coolsInPlace,
  ({ coolSeconds }) => coolSeconds !== null && coolSeconds < wanted,
  (left) => {
    const seconds = left.recipe.steps.coolSeconds ?? 0;
    return makeFinding({
      id: 'REC-09',
      severity: 'caution',
      variant: 'cloth',
      where: left.where,
      found: { value: seconds, unit: 's' },
      limit: { value: wanted, unit: 's' },
      facts: { line: left.line, seconds, wanted },
      fix: { label: 'planCooling', facts: { seconds: wanted }, changes: left.plan(wanted) },
    });
  },
);

const coolByFan = stepRule(
  'evenCooling',
  coolsByFan,
  ({ evenCooling }) => evenCooling === false,
  (left) =>
    makeFinding({
      id: 'REC-09',
      severity: 'caution',
      variant: 'hard',
      where: left.where,
      facts: { line: left.line },
      fix: { label: 'planFan', facts: {}, changes: left.plan(true) },
    }),
);

/** REC-11: air that is dry or damp, by a meter or by the maker's word. */
const humidity: Rule = ({ resolved: { workshop } }) => {
  const { humidity: read, humidityFits } = workshop.habits;
  const { dry, damp } = thresholds.air;
  const draft = { id: 'REC-11', severity: 'caution' } as const;
  const limits = { least: dry.value, most: damp.value };
  if (read === null) {
    return humidityFits === false
      ? [
          makeFinding({
            ...draft,
            variant: 'said',
            where: { document: 'workshop', path: ['habits', 'humidityFits'] },
            facts: limits,
            fix: {
              label: 'airIsRight',
              facts: {},
              changes: [{ document: 'workshop', path: ['habits', 'humidityFits'], value: true }],
            },
          }),
        ]
      : [];
  }
  const isDry = read < dry.value - 1e-9;
  if (!isDry && read <= damp.value + 1e-9) return [];
  return [
    makeFinding({
      ...draft,
      variant: isDry ? 'dry' : 'damp',
      where: { document: 'workshop', path: ['habits', 'humidity'] },
      found: { value: read, unit: 'share' },
      limit: { value: (isDry ? dry : damp).value, unit: 'share' },
      facts: { humidity: read, ...limits },
    }),
  ];
};

export const plannedStepRules: readonly Rule[] = [lintRoll, tape, coolInPlace, coolByFan, humidity];
