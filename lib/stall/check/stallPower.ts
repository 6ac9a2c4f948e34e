import { makeFinding } from '@/lib/findings/makeFinding';
import type { OwnPower } from '@/shared/facts/safetyFacts';
import type { Finding } from '@/shared/finding';
import type { StallDay } from '@/shared/schemas/stallDay';
import type { Workshop } from '@/shared/schemas/workshop';

/** Sums of kW in watts are exact to far less than this. */
const WATTS_NOISE = 1e-6;

interface PowerScene {
  readonly stallDayId: string;
  readonly stallDay: Pick<StallDay, 'power'>;
  readonly presses: Workshop['presses'];
}

/**
 * ELE-03: what gives power at the stall against the rated power of all presses used there, as if all heat at once.
 * Nothing where nothing is pressed there. A stop of a stall day withholds nothing, so no reason passes it.
 */
export function stallPower(scene: PowerScene): readonly Finding[] {
  const { power } = scene.stallDay;
  if (power.pressIds.length === 0 || power.source === 'mains') return [];
  return [...unknownPresses(scene), ...sourceFindings(scene)];
}

// Helpers

const usedOf = ({ stallDay: { power }, presses }: PowerScene) =>
  presses.filter(({ id }) => power.pressIds.includes(id));

const at = ({ stallDayId }: PowerScene, field: keyof StallDay['power']) =>
  ({
    id: 'ELE-03',
    where: { document: 'stallDay', id: stallDayId, path: ['power', field] },
    waivable: false,
  }) as const;

/** Presses of which nobody can say what they take. */
function unknownPresses(scene: PowerScene): readonly Finding[] {
  const draft = { ...at(scene, 'pressIds'), severity: 'caution' } as const;
  const used = usedOf(scene);
  const unrated = used.filter(({ powerKw }) => powerKw === null).map(({ name }) => name);
  return [
    ...(used.length < scene.stallDay.power.pressIds.length
      ? [makeFinding({ ...draft, variant: 'pressGone', facts: {} })]
      : []),
    ...(unrated.length > 0
      ? [makeFinding({ ...draft, variant: 'noPower', facts: { presses: unrated.join(', ') } })]
      : []),
  ];
}

function sourceFindings(scene: PowerScene): readonly Finding[] {
  const { source, guaranteedWatts } = scene.stallDay.power;
  switch (source) {
    case 'mains':
      return [];
    case 'none':
      return [makeFinding({ ...at(scene, 'source'), severity: 'stop', variant: 'noSource', facts: {} })];
    case 'unset':
      return [makeFinding({ ...at(scene, 'source'), severity: 'caution', variant: 'askSource', facts: {} })];
    case 'battery':
    case 'generator':
      return ownSource(scene, source, guaranteedWatts);
    default:
      return source satisfies never;
  }
}

/** Held against the presses whose power is known; of the others it is asked. */
function ownSource(scene: PowerScene, source: OwnPower, guaranteed: number | null): readonly Finding[] {
  const draft = at(scene, 'guaranteedWatts');
  const watts = usedOf(scene).reduce((sum, { powerKw }) => sum + (powerKw?.value ?? 0) * 1000, 0);
  if (watts === 0) return [];
  if (guaranteed === null) {
    return [makeFinding({ ...draft, severity: 'caution', variant: 'askWatts', facts: { source, watts } })];
  }
  if (guaranteed >= watts - WATTS_NOISE) return [];
  return [
    makeFinding({
      ...draft,
      severity: 'stop',
      variant: 'tooLittle',
      found: { value: guaranteed, unit: 'W' },
      limit: { value: watts, unit: 'W' },
      facts: { source, watts, guaranteed },
    }),
  ];
}
