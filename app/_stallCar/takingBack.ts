import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { planMoves } from '@/lib/stall/car/planMoves';
import type { PlansOfDay } from '@/lib/stall/car/plansOf';
import type { ShownPlan } from './carOnScreen';

/**
 * Takes the plan back that is counted by, and moves the stock to where the one before it had it: home where there is none.
 * One step, so that undo brings both back.
 */
export function takePlanBack(
  { note, entries, piles }: Pick<ReadyWorkspace, 'note' | 'entries' | 'piles'>,
  { counts, earlier }: PlansOfDay<ShownPlan>,
  name: string,
): void {
  if (counts === null) return;
  const issued = entries.issuing.filter(({ body }) => body.paperId === counts.id);
  const [before] = earlier;
  const stock = { piles, moves: entries.stockMove };
  note(`Take back the plan of ${name}`, [
    ...issued.map(({ id }) => ({ kind: 'takeBack', body: { entryId: id } }) as const),
    ...planMoves(counts.body.stallDayId, before?.body.goods ?? [], stock).map(
      (body) => ({ kind: 'stockMove', body }) as const,
    ),
  ]);
}
