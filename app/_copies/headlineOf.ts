import type { Formatter } from '@/app/_words/formatter';
import {
  type ArrivalHeadline,
  arrivalHeadline,
  carriedHeadline,
  nothingChanges,
} from '@/app/_words/store/arrivalWords';
import { withItWords } from '@/app/_words/store/carriedWords';
import { damageWords } from '@/app/_words/store/copyFileWords';
import { draftName } from '@/app/_words/store/draftNames';
import { arrivingIn } from '@/app/_words/store/fateWords';
import type { ArrivalPlan } from '@/lib/copies/arrival';
import type { ArrivalGroup } from '@/lib/copies/arrivalGroups';
import { holdingsOfPlan } from './holdingsOfPlan';

/**
 * The sentence above a preview: of a whole copy what would come of it, of a carried draft that one first, then what else
 * comes with it. Where it is damaged that stands before all.
 */
export function headlineOf(
  plan: ArrivalPlan,
  groups: readonly ArrivalGroup[],
  formatter: Formatter,
): ArrivalHeadline {
  const damage = damageWords(plan.copy.lacks, formatter);
  const { bold, rest } = soundHeadline(plan, groups, formatter);
  if (damage === null) return { bold, rest };
  const changes = groups.some(({ isChange }) => isChange) || rest !== nothingChanges;
  return { bold: damage, rest: changes ? `${bold} ${rest}` : `What was read of it is here already, ${rest}` };
}

// Helpers

function soundHeadline(
  plan: ArrivalPlan,
  groups: readonly ArrivalGroup[],
  formatter: Formatter,
): ArrivalHeadline {
  const { copy, meetings, counts } = plan;
  const { of } = copy;
  const main = of === 'everything' ? undefined : meetings.find(({ id }) => id === of.id);
  const fate = groups.find(({ drafts }) => drafts.some(({ id }) => id === main?.id))?.fate;
  if (main === undefined || fate === undefined) {
    return arrivalHeadline({ groups, ...counts }, arrivingIn(of));
  }
  const withIt = withItWords(main.kind, holdingsOfPlan(plan), formatter);
  return carriedHeadline({ name: draftName(main), withIt, fate }, { groups, ...counts }, arrivingIn(of));
}
