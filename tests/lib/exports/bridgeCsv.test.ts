import { expect, it } from 'vitest';
import { bridgeCsvWords } from '@/app/_words/afterRun/gapWords';
import { bridgeCsv } from '@/lib/exports/bridgeCsv';
import type { BridgeBar } from '@/lib/variances/runResult';
import type { MinorUnits } from '@/shared/money';

const bar = (line: BridgeBar['line'], minor: number, about: Partial<BridgeBar> = {}): BridgeBar => ({
  ...{
    line,
    minor: minor as MinorUnits,
    amount: minor / 100,
    from: 39.52,
    to: 41,
    times: 4.8297,
    cause: null,
  },
  ...{ actual: 'typed', units: ['money', 'piece'] },
  ...about,
});
const result = {
  currency: 'USD',
  bridge: { from: 28_837 as MinorUnits, to: 27_629 as MinorUnits },
  bars: [
    bar('blanksPrice', -493, { from: 4.82973, to: 4.95, times: 41 }),
    bar('blanksUsage', -715, {
      cause: { cause: 'pressFault', note: '=2 ghosts, "1" speck', entryId: 'a-1' },
    }),
  ],
};

// 288.37 − 4.93 − 7.15 = 276.29.
it('is the profit quoted, each gap with its cause, and the profit that came; a note runs nothing in a spreadsheet', () => {
  expect(bridgeCsv(result, bridgeCsvWords).split('\r\n')).toEqual([
    'line,amount (USD),standard,actual,times,cause,note',
    'Profit as quoted,288.37,,,,,',
    'Price of blanks,-4.93,4.8297,4.95,41,,',
    `Blanks used,-7.15,39.52,41,4.8297,Fault at the press,"'=2 ghosts, ""1"" speck"`,
    'Profit as it came,276.29,,,,,',
    '',
  ]);
});

it('has no profits where no price was asked', () => {
  expect(bridgeCsv({ ...result, bridge: null }, bridgeCsvWords)).not.toContain('Profit');
});
