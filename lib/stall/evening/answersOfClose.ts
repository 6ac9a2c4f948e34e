import { goodsKey } from '@/lib/stall/goodsKey';
import type { DayClose } from '@/shared/schemas/stallPapers';
import { type EveningAnswers, noAnswers } from './eveningAnswers';

/** What was said in the evening that a close came of, so that a correction begins with it. */
export function answersOfClose({ money, goods, result, ...close }: DayClose): EveningAnswers {
  return {
    ...noAnswers,
    cash: {
      counted: money.countedCash,
      coins: money.coins,
      reason: money.reason,
      reasonFor: money.difference,
    },
    card: {
      total: money.cardIs === 'typed' ? money.card : null,
      tickets: money.ticketsAre === 'typed' ? money.cardTickets : null,
      payout: money.payout,
      // A total beyond all goods was said to be right before the day was closed.
      isRight: money.cardIs === 'typed',
    },
    stock: {
      counted: Object.fromEntries(
        goods.flatMap((one) =>
          one.counted === null
            ? []
            : [
                [
                  goodsKey(one),
                  {
                    ...{ pieces: one.counted, reason: one.reason, reasonFor: one.reasonFor ?? null },
                    ...(one.untappedPay === undefined ? {} : { pay: one.untappedPay }),
                  },
                ],
              ],
        ),
      ),
      isRestAsReckoned: false,
      isRestUnknown: goods.some(({ counted }) => counted === null),
    },
    hours: result.hours,
    weatherOfDays: saidOf(close),
    notLost: goods.flatMap((one) => (one.isLostLeftOut === true ? [goodsKey(one)] : [])),
    lostAfterAll: goods.flatMap((one) => (one.isLostTaken === true ? [goodsKey(one)] : [])),
    decision: close.decision,
    note: close.note,
  };
}

// Helpers

/** Days of which nothing was said stay as they are tapped. A close from before it was kept may have said any single one. */
function saidOf({ weather, weatherSaid }: Pick<DayClose, 'weather' | 'weatherSaid'>) {
  const parts = weather?.parts ?? [];
  const said = weatherSaid ?? parts.filter(({ day }) => parts.filter((one) => one.day === day).length === 1);
  return Object.fromEntries(said.map(({ day, weatherId }) => [day, weatherId]));
}
