import { makeFinding } from '@/lib/findings/makeFinding';
import { orderFindings } from '@/lib/findings/orderFindings';
import { lastDayOf } from '@/lib/stall/sellingDays';
import { daysBetween } from '@/shared/days';
import type { Finding } from '@/shared/finding';
import type { StallDay } from '@/shared/schemas/stallDay';
import type { Workshop } from '@/shared/schemas/workshop';
import { stallPower } from './stallPower';

/** What the rules of a stall day look at. */
interface StallScene {
  readonly stallDayId: string;
  readonly stallDay: Pick<StallDay, 'stage' | 'days' | 'permit' | 'insurance' | 'power' | 'archivedOn'>;
  readonly presses: Workshop['presses'];
  /** YYYY-MM-DD. */
  readonly today: string;
}

/** @returns ELE-03 and LAW-06 of a stall day; nothing of one that is over, refused or called off. */
export function checkStallDay(scene: StallScene): readonly Finding[] {
  const { stage, archivedOn } = scene.stallDay;
  const lastDay = lastDayOf(scene.stallDay);
  const isOver = lastDay !== null && daysBetween(lastDay, scene.today) > 0;
  if (isOver || archivedOn !== null || stage === 'refused' || stage === 'calledOff') return [];
  return orderFindings([...stallPower(scene), ...unsettledProofs(scene), ...endedProofs(scene, lastDay)]);
}

/** LAW-06: whether a permit or insurance is needed was not asked, told as one. */
function unsettledProofs({ stallDayId, stallDay: { permit, insurance } }: StallScene): readonly Finding[] {
  const unset = (['permit', 'insurance'] as const).filter(
    (paper) => ({ permit, insurance })[paper].state === 'unset',
  );
  const [paper] = unset;
  if (paper === undefined) return [];
  return [
    makeFinding({
      id: 'LAW-06',
      severity: 'caution',
      variant: unset.length === 2 ? 'both' : paper,
      where: { document: 'stallDay', id: stallDayId, path: [paper, 'state'] },
      facts: {},
    }),
  ];
}

/** LAW-06: what is there ends before the last day of selling. */
function endedProofs(
  { stallDayId, stallDay: { permit, insurance } }: StallScene,
  lastDay: string | null,
): readonly Finding[] {
  if (lastDay === null) return [];
  return (['permit', 'insurance'] as const).flatMap((paper) => {
    const { state, until } = { permit, insurance }[paper];
    if (state !== 'have' || until === null || daysBetween(until, lastDay) <= 0) return [];
    return [
      makeFinding({
        id: 'LAW-06',
        severity: 'caution',
        variant: paper === 'permit' ? 'permitEnds' : 'insuranceEnds',
        where: { document: 'stallDay', id: stallDayId, path: [paper, 'until'] },
        found: until,
        limit: lastDay,
        facts: { until, lastDay },
      }),
    ];
  });
}
