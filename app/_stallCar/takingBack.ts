import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { carMoves } from '@/lib/stall/car/carMoves';
import type { PlansOfDay } from '@/lib/stall/car/plansOf';
import { goodsKey } from '@/lib/stall/count/goodsKey';
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
  const brought = before?.body.goods ?? [];
  const bringOf = new Map(brought.map((one) => [goodsKey(one), one.bring]));
  const goods = counts.body.goods.map(({ jobId, lineId, size }) => ({
    ...{ jobId, lineId, size },
    bring: bringOf.get(goodsKey({ jobId, lineId, size })) ?? 0,
  }));
  const named = new Set(goods.map(goodsKey));
  const others = brought.filter((one) => !named.has(goodsKey(one)));
  note(`Take back the plan of ${name}`, [
    ...issued.map(({ id }) => ({ kind: 'takeBack', body: { entryId: id } }) as const),
    ...carMoves(counts.body.stallDayId, [...goods, ...others], { piles, moves: entries.stockMove }).map(
      (body) => ({ kind: 'stockMove', body }) as const,
    ),
  ]);
}
