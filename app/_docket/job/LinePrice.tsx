'use client';

import { useJob } from '@/app/_docket/common/useJob';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { pieceWords } from '@/app/_words/docket/pieceWords';
import { numberLimits } from '@/shared/limits';
import { type Line, lineSchema } from '@/shared/schemas/job';
import type { Channel } from '@/shared/schemas/workshop';
import { currencyDigits } from '@/shared/tables/currencies';

/** The price asked for a piece of a line, as the way of selling writes it. */
export function LinePrice({ line, index }: Readonly<{ line: Line; index: number }>) {
  const { input, field } = useJob();
  const { currency, channels } = input.workshop;
  const channel = channels.find(({ id }) => id === input.job.channelId);
  const piece = pieceWords(input.blanks[line.blankId]);
  const digits = currencyDigits(currency) ?? 2;
  const money = { unit: currency, decimals: digits, minDecimals: digits };
  return (
    <FieldGroup>
      <NumberField
        {...field(`Price of a ${piece.one}`, ['lines', index, 'askedPrice'], `Price of ${line.name}`)}
        {...numberLimits(lineSchema, ['askedPrice'])}
        {...money}
        width="narrow"
        value={line.askedPrice}
        hint={line.askedPrice === null ? 'Not decided: the target price stands in.' : taxHint(channel)}
      />
      <NumberField
        {...field('Most they pay', ['lines', index, 'marketCeiling'], `Most paid for ${line.name}`)}
        {...numberLimits(lineSchema, ['marketCeiling'])}
        {...money}
        value={line.marketCeiling}
        width="narrow"
      />
    </FieldGroup>
  );
}

// Helpers

function taxHint(channel: Channel | undefined): string | undefined {
  switch (channel?.taxMode) {
    case 'inside':
      return 'Tax is inside, as at a stall.';
    case 'added':
      return 'Tax is added later.';
    case 'none':
      return 'No tax on this way of selling.';
    default:
      return undefined;
  }
}
