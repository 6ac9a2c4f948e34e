import { describe, expect, it } from 'vitest';
import { formatterFor } from '@/app/_words/formatter';
import { bytesWords } from '@/app/_words/store/bytesWords';
import { storageRoomWords } from '@/app/_words/store/storagePromiseWords';

const formatter = formatterFor({
  locale: 'en-US',
  units: { length: 'mm', temperature: 'C', pressure: 'bar', volume: 'mL', distance: 'km' },
  currency: 'USD',
});

describe('bytesWords', () => {
  it.each([
    [0, '0 bytes'],
    [999, '999 bytes'],
    [1_000, '1 kB'],
    [1_540, '1.5 kB'],
    [31_400_000, '31 MB'],
    [999_600, '1 MB'],
    [2_500_000_000, '2.5 GB'],
  ])('says %d bytes as %s', (bytes, words) => {
    expect(bytesWords(bytes, formatter)).toBe(words);
  });
});

describe('storageRoomWords', () => {
  it('tells what is used and what is left, never less than nothing', () => {
    expect(storageRoomWords({ usedBytes: 31_000_000, quotaBytes: 2_031_000_000 }, formatter)).toBe(
      'It takes about 31 MB here; about 2 GB are left.',
    );
    expect(storageRoomWords({ usedBytes: 5_000, quotaBytes: 4_000 }, formatter)).toBe(
      'It takes about 5 kB here; about 0 bytes are left.',
    );
  });

  it('says so where the browser does not tell', () => {
    expect(storageRoomWords(null, formatter)).toBe('It does not say how much room is left.');
  });
});
