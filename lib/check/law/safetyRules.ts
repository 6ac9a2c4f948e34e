import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { ResolvedJob } from '@/lib/job/checkedJob';
import { thresholds } from '@/shared/tables/thresholds';

/**
 * ELE-01: everything on one circuit at once against its breaker. 80 % is the mark for loads of three hours and
 * more, taken as the mark for all: a pressing evening is one. Without figures the maker's own answer counts.
 */
const circuit: Rule = ({ resolved }) => {
  const where = { document: 'workshop', path: ['circuit'] } as const;
  const { circuit: known } = resolved.workshop;
  const machineWatts = wattsOf(resolved);
  if (known === null) {
    if (resolved.workshop.habits.ownCircuit !== false) return [];
    return [
      makeFinding({
        id: 'ELE-01',
        severity: 'caution',
        variant: 'shared',
        where,
        facts: { watts: machineWatts },
      }),
    ];
  }
  const watts = machineWatts + known.otherWatts;
  const full = known.volts * known.amps;
  const mark = full * thresholds.circuit.continuous.value;
  if (watts <= mark + 1e-6) return [];
  const isOver = watts > full + 1e-6;
  return [
    makeFinding({
      id: 'ELE-01',
      severity: isOver ? 'stop' : 'caution',
      ...(isOver
        ? ({ variant: 'over', facts: { watts, full } } as const)
        : ({ variant: 'near', facts: { watts, mark, full, volts: known.volts, amps: known.amps } } as const)),
      waivable: false,
      where,
      found: { value: watts, unit: 'W' },
      limit: { value: isOver ? full : mark, unit: 'W' },
      fix:
        known.otherWatts > 0 && machineWatts <= mark + 1e-6
          ? {
              label: 'othersElsewhere',
              facts: { others: known.otherWatts },
              changes: [{ document: 'workshop', path: ['circuit', 'otherWatts'], value: 0 }],
            }
          : null,
    }),
  ];
};

/** SAF-01: fumes need a way out, and an oven that cooks food cooks nothing else. */
const air: Rule = ({ resolved }) => {
  const { room } = resolved.workshop;
  const oven = room.foodOvenUsed
    ? [
        makeFinding({
          id: 'SAF-01',
          severity: 'stop',
          variant: 'foodOven',
          waivable: false,
          where: { document: 'workshop', path: ['room', 'foodOvenUsed'] },
          facts: {},
          fix: {
            label: 'noFoodOven',
            facts: {},
            changes: [{ document: 'workshop', path: ['room', 'foodOvenUsed'], value: false }],
          },
        }),
      ]
    : [];
  if (room.ventilated !== false) return oven;
  return [
    ...oven,
    makeFinding({
      id: 'SAF-01',
      severity: 'caution',
      variant: 'closed',
      where: { document: 'workshop', path: ['room', 'ventilated'] },
      facts: {},
      fix: {
        label: 'ventilate',
        facts: {},
        changes: [{ document: 'workshop', path: ['room', 'ventilated'], value: true }],
      },
    }),
  ];
};

function wattsOf({ printer, lines }: ResolvedJob): number {
  const presses = new Map(
    lines.flatMap(({ placements }) =>
      placements.map(({ press }) => [press.id, press.powerKw.value] as const),
    ),
  );
  return [...presses.values()].reduce((sum, kw) => sum + kw * 1000, printer.powerKw.value * 1000);
}

export const safetyRules: readonly Rule[] = [circuit, air];
