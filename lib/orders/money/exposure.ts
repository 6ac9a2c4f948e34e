import type { Spent } from './spending';

/** What came less what was spent, at the end of a day. */
interface ExposurePoint {
  readonly day: string;
  /** Less than 0 where the maker's own money is in it. */
  readonly balanceMinor: number;
}

export interface Exposure {
  /** One for each day on which money moved, rising. */
  readonly points: readonly ExposurePoint[];
  /** The day with the least, the first of them where several have it; null where no money moved. */
  readonly lowest: ExposurePoint | null;
}

/** Money that came, net of fees; less than 0 where it went back. */
interface Received {
  readonly day: string;
  readonly netMinor: number;
}

/** How much of the maker's own money an order held over time. */
export function exposure(
  spent: readonly Pick<Spent, 'day' | 'amountMinor'>[],
  received: readonly Received[],
): Exposure {
  const byDay = new Map<string, number>();
  const add = (day: string, amountMinor: number) => byDay.set(day, (byDay.get(day) ?? 0) + amountMinor);
  for (const { day, netMinor } of received) add(day, netMinor);
  for (const { day, amountMinor } of spent) add(day, -amountMinor);
  let balanceMinor = 0;
  const points = [...byDay]
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([day, change]): ExposurePoint => {
      balanceMinor += change;
      return { day, balanceMinor };
    });
  const lowest = points.reduce<ExposurePoint | null>(
    (least, point) => (least === null || point.balanceMinor < least.balanceMinor ? point : least),
    null,
  );
  return { points, lowest };
}

/** @returns the exposure of several orders together, in one currency. */
export function exposureOfAll(all: readonly Exposure[]): Exposure {
  const moved = all.flatMap(({ points }) =>
    points.map(({ day, balanceMinor }, at) => ({
      day,
      netMinor: balanceMinor - (points[at - 1]?.balanceMinor ?? 0),
    })),
  );
  return exposure([], moved);
}
