import type { GoodsAsked } from '@/lib/stall/plan/demand/goodsAsked';
import type { Job } from '@/shared/schemas/job';
import type { JobInput } from '@/shared/schemas/request';
import type { Channel, Workshop } from '@/shared/schemas/workshop';

interface ForStall {
  readonly day: string;
  readonly workshop: Workshop;
  readonly channel: Channel;
  /** All of this job. */
  readonly goods: readonly GoodsAsked[];
}

/**
 * A job as a stall day makes it: to stock, sold by the day's way of selling, only what comes along. The selling day and
 * its minutes are the plan's own, so that a way of selling that bears a share of them does not count them twice.
 */
export function jobForStall(input: JobInput, { day, workshop, channel, goods }: ForStall): JobInput {
  const selling: Channel = {
    ...channel,
    kind: 'stall',
    sellingMinutesPerPiece: null,
    dayCost: null,
    dayPieces: null,
  };
  return {
    ...input,
    asOf: day,
    workshop: {
      ...workshop,
      channels: workshop.channels.map((one) => (one.id === channel.id ? selling : one)),
    },
    job: {
      ...input.job,
      madeFor: 'stock',
      channelId: channel.id,
      wantedOn: null,
      deliveryKm: null,
      cardPayments: 0,
      lines: linesOf(input.job, goods),
    },
  };
}

// Helpers

/** As many as a dry day asks for, so that what is checked is near what is made. */
const linesOf = ({ lines }: Job, goods: readonly GoodsAsked[]): Job['lines'] =>
  lines.flatMap((line) => {
    const sizes = goods.filter(({ lineId }) => lineId === line.id);
    if (sizes.length === 0) return [];
    return [
      {
        ...line,
        orderedQuantity: null,
        nameList: '',
        askedStart: null,
        quantities: sizes.map(({ size, expected }) => ({
          size,
          quantity: Math.min(100_000, Math.max(1, Math.ceil(expected))),
        })),
      },
    ];
  });
