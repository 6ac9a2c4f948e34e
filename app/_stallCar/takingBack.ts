import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { carMoves } from '@/lib/stall/car/carMoves';
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
  const goods = counts.body.goods.map(({ jobId, lineId, size }) => ({
    ...{ jobId, lineId, size },
    bring:
      before?.body.goods.find((one) => one.jobId === jobId && one.lineId === lineId && one.size === size)
        ?.bring ?? 0,
  }));
  const others = (before?.body.goods ?? []).filter(
    (one) =>
      !goods.some(
        ({ jobId, lineId, size }) => one.jobId === jobId && one.lineId === lineId && one.size === size,
      ),
  );
  note(`Take back the plan of ${name}`, [
    ...issued.map(({ id }) => ({ kind: 'takeBack', body: { entryId: id } }) as const),
    ...carMoves(counts.body.stallDayId, [...goods, ...others], { piles, moves: entries.stockMove }).map(
      (body) => ({ kind: 'stockMove', body }) as const,
    ),
  ]);
}
