import type { LatestDates } from './orderDates';
import type { WorkPlan } from './workPlan';

/** What of an order stands in a calendar. */
type OrderMoment = 'orderBlanks' | 'approve' | 'print' | 'press' | 'wanted';

interface OrderEntry {
  /** The same whenever the order's entries are made; sessions are counted. */
  readonly id: string;
  readonly what: OrderMoment;
  readonly when:
    | { readonly kind: 'days'; readonly from: string; readonly to: string }
    | {
        readonly kind: 'time';
        readonly day: string;
        readonly fromMinute: number;
        readonly minutes: number;
      };
}

/** @returns the last days of an order and its sessions at the press, each with an id of its own. */
export function orderEntries(
  orderId: string,
  wantedOn: string,
  latest: Pick<LatestDates, 'orderBlanksBy' | 'approveBy' | 'printBy'>,
  { sessions }: Pick<WorkPlan, 'sessions'>,
): readonly OrderEntry[] {
  const day = (what: OrderMoment, on: string | null): readonly OrderEntry[] =>
    on === null ? [] : [{ id: `${orderId}-${what}`, what, when: { kind: 'days', from: on, to: on } }];
  return [
    ...day('approve', latest.approveBy),
    ...day('orderBlanks', latest.orderBlanksBy),
    ...day('print', latest.printBy),
    ...sessions.map(
      (session, index): OrderEntry => ({
        id: `${orderId}-press-${index + 1}`,
        what: 'press',
        when: {
          kind: 'time',
          day: session.day,
          fromMinute: session.fromMinute,
          minutes: session.minutes,
        },
      }),
    ),
    ...day('wanted', wantedOn),
  ];
}
