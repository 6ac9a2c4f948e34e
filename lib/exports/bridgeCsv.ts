import type { RunResult } from '@/lib/variances/runResult';
import { fromMinor } from '@/shared/money';
import { textCell } from '@/shared/textCell';

/** Words that stand in a row. */
interface BridgeCsvWords {
  readonly lineOf: (line: RunResult['bars'][number]['line']) => string;
  readonly causeOf: (cause: NonNullable<RunResult['bars'][number]['cause']>['cause']) => string;
  /** The profit at which the bridge begins, and that at which it ends. */
  readonly quoted: string;
  readonly came: string;
}

/**
 * A bridge as comma-separated values with a header row. Numbers have a point and no groups; the amounts add up.
 */
export function bridgeCsv(
  { currency, bridge, bars }: Pick<RunResult, 'currency' | 'bridge' | 'bars'>,
  words: BridgeCsvWords,
): string {
  const header = ['line', `amount (${currency})`, 'standard', 'actual', 'times', 'cause', 'note'];
  const ends = (name: string, minor: (typeof bars)[number]['minor'] | undefined) =>
    minor === undefined ? [] : [[textCell(name), fromMinor(minor, currency), '', '', '', '', '']];
  const rows = bars.map(({ line, minor, from, to, times, cause }) => [
    textCell(words.lineOf(line)),
    fromMinor(minor, currency),
    Number(from.toFixed(4)),
    Number(to.toFixed(4)),
    Number(times.toFixed(4)),
    cause === null ? '' : textCell(words.causeOf(cause.cause)),
    textCell(cause?.note ?? ''),
  ]);
  return [header, ...ends(words.quoted, bridge?.from), ...rows, ...ends(words.came, bridge?.to)]
    .map((cells) => `${cells.join(',')}\r\n`)
    .join('');
}
