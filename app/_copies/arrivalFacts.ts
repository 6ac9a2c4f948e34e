import { arrangeArrival } from '@/lib/copies/arrangeArrival';
import type { ArrivalPlan } from '@/lib/copies/arrival';
import { kinds } from '@/lib/kinds/kinds';
import { claimedName } from '@/lib/stored/claimedName';

/** What a preview tells beside what becomes of each draft. */
interface ArrivalFacts {
  /** Live drafts here by kind. */
  readonly hereKinds: Readonly<Record<string, number>>;
  /** When anything here was changed last; null where there is nothing. */
  readonly hereChangedAt: number | null;
  readonly isSameDevice: boolean;
}

/** @returns what is here today. */
export function arrivalFacts({ here, copy }: ArrivalPlan): ArrivalFacts {
  const live = [...here.drafts.values()].filter(({ deletedAt }) => deletedAt === undefined);
  const hereKinds: Record<string, number> = {};
  for (const { kind } of live) hereKinds[kind] = (hereKinds[kind] ?? 0) + 1;
  return {
    hereKinds,
    hereChangedAt: live.length === 0 ? null : Math.max(...live.map(({ updatedAt }) => updatedAt)),
    isSameDevice: copy.device !== null && copy.device.id === here.device?.id,
  };
}

/** What would be lost if the copy took the place of everything. */
interface ArrivalLoss {
  readonly goes: readonly { readonly kind: string; readonly name: string | null }[];
  /** Drafts changed here that would go back to what the copy has. */
  readonly older: number;
}

/** @returns the loss, by the sums that the store itself goes by. */
export function arrivalLoss(plan: ArrivalPlan): ArrivalLoss {
  const { goes, goesBack } = arrangeArrival(plan, { mode: 'replace' }, kinds);
  return {
    goes: goes.map((draft) => ({ kind: draft.kind, name: claimedName(draft) })),
    older: goesBack.length,
  };
}
