'use client';

import { useJob } from '@/app/_docket/common/useJob';
import { NumberField } from '@/app/_fields/NumberField';
import { useTextContext } from '@/app/_fields/useTextContext';
import { pieceWords } from '@/app/_words/docket/pieceWords';
import { upChargesWords } from '@/app/_words/docket/upChargesWords';
import { lineRule } from '@/lib/job/lineRule';
import { numberLimits } from '@/shared/limits';
import { type Line, lineSchema } from '@/shared/schemas/job';
import type { Channel } from '@/shared/schemas/workshop';
import { currencyDigits } from '@/shared/tables/currencies';
import styles from './LinePrice.module.css';

/** The price asked for a piece of a line, as the way of selling writes it. */
export function LinePrice({ line, index }: Readonly<{ line: Line; index: number }>) {
  const { input, field } = useJob();
  const { locale } = useTextContext();
  const { currency, channels } = input.workshop;
  const channel = channels.find(({ id }) => id === input.job.channelId);
  const piece = pieceWords(input.blanks[line.blankId]);
  const digits = currencyDigits(currency) ?? 2;
  const money = { unit: currency, decimals: digits, minDecimals: digits };
  const besides = [taxHint(channel), upChargesWords(line.upCharges, currency, locale)].filter((part) => part);
  return (
    <div className={styles.prices}>
      <NumberField
        {...field(`Price of a ${piece.one}`, ['lines', index, 'askedPrice'], `Price of ${line.name}`)}
        {...numberLimits(lineSchema, ['askedPrice'])}
        {...money}
        width="narrow"
        value={line.askedPrice}
        hint={line.askedPrice === null ? 'Not decided: the suggested price stands in.' : undefined}
      />
      {(line.askedStart !== null || lineRule(input, { line }) === 'setUpApart') && (
        <NumberField
          {...field('To start', ['lines', index, 'askedStart'], `To start of ${line.name}`)}
          {...numberLimits(lineSchema, ['askedStart'])}
          {...money}
          width="narrow"
          value={line.askedStart}
          hint={
            line.askedPrice !== null && line.askedStart === null
              ? 'Once an order; nothing is asked.'
              : undefined
          }
        />
      )}
      <NumberField
        {...field('Most they pay', ['lines', index, 'marketCeiling'], `Most paid for ${line.name}`)}
        {...numberLimits(lineSchema, ['marketCeiling'])}
        {...money}
        width="narrow"
        value={line.marketCeiling}
      />
      {besides.length > 0 && (
        <p className={styles.besides}>
          {besides.map((part) => (
            <span key={part}>{part}</span>
          ))}
        </p>
      )}
    </div>
  );
}

// Helpers

function taxHint(channel: Channel | undefined): string | undefined {
  switch (channel?.taxMode) {
    case 'inside':
      return 'with tax inside';
    case 'added':
      return 'tax added later';
    case 'none':
      return 'no tax on this way of selling';
    default:
      return undefined;
  }
}
