'use client';

import { newParts } from '@/lib/jobs/newParts';
import type { Channel } from '@/shared/schemas/workshop';
import { today } from '../_documents/useToday';
import { Advice } from '../_shell/Advice';
import { ChannelFields } from './ChannelFields';
import { PartList } from './PartList';
import type { WorkshopDesk } from './workshopDesk';
import { channelKindWords } from './workshopWords';

const kinds = ['order', 'stall', 'wholesale', 'consignment'] as const satisfies readonly Channel['kind'][];

/** The ways of selling, with the tax and fees that stand between a price and the maker. */
export function ChannelSection({ desk }: Readonly<{ desk: WorkshopDesk }>) {
  const parts = newParts(today(), desk.workshop);
  return (
    <>
      <Advice severity="caution">
        What is taxed, at what rate and from when differs from place to place; set-up and art charges can be
        taxed too. Ask your local authority before you sell.
      </Advice>
      <PartList
        desk={desk}
        list="channels"
        kind="channel"
        noun="way of selling"
        lineOf={lineOf}
        adders={kinds.map((kind) => ({
          label: channelKindWords[kind],
          make: (id) => parts.channel(id, channelKindWords[kind], kind),
        }))}
      >
        {(channel, path) => <ChannelFields desk={desk} channel={channel} path={path} kinds={kinds} />}
      </PartList>
    </>
  );
}

// Helpers

function lineOf({ taxMode }: Channel): string {
  switch (taxMode) {
    case null:
      return 'with or without tax: not yet said';
    case 'added':
      return 'tax is added on top';
    case 'inside':
      return 'tax is inside the price';
    case 'none':
      return 'no tax charged';
    default:
      return taxMode satisfies never;
  }
}
