'use client';

import { today } from '@/app/_clock/useToday';
import { Advice } from '@/app/_controls/Advice';
import { channelKindWords } from '@/app/_words/workshop/workshopWords';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { newParts } from '@/lib/drafts/newParts';
import type { Channel } from '@/shared/schemas/workshop';
import { ChannelFields } from './ChannelFields';
import { PartList } from './PartList';

const kinds = ['order', 'stall', 'wholesale', 'consignment'] as const satisfies readonly Channel['kind'][];

/** The ways of selling, with the tax and fees that stand between a price and the maker. */
export function ChannelSection({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const parts = newParts(today(), fields.workshop);
  return (
    <>
      <Advice severity="caution">
        What is taxed, at what rate and from when differs from place to place; set-up and art charges can be
        taxed too. Ask your local authority before you sell.
      </Advice>
      <PartList
        fields={fields}
        list="channels"
        kind="channel"
        noun="way of selling"
        lineOf={lineOf}
        adders={kinds.map((kind) => ({
          label: channelKindWords[kind],
          make: (id) => parts.channel(id, channelKindWords[kind], kind),
        }))}
      >
        {(channel, path) => <ChannelFields fields={fields} channel={channel} path={path} kinds={kinds} />}
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
