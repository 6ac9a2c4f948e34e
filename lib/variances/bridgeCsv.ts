import { fromMinor } from '@/shared/money';
import { textCell } from '@/shared/textCell';
import type { RunResult } from './runResult';

/**
 * A bridge as comma-separated values with a header row. Numbers have a point and no groups; the amounts add up.
 *
 * @param nameOf what a line is called
 * @param causeOf what a cause is called
 */
export function bridgeCsv(
  { currency, bridge, bars }: Pick<RunResult, 'currency' | 'bridge' | 'bars'>,
  nameOf: (line: RunResult['bars'][number]['line']) => string,
  causeOf: (cause: NonNullable<RunResult['bars'][number]['cause']>['cause']) => string,
): string {
  const header = ['line', `amount (${currency})`, 'standard', 'actual', 'times', 'cause', 'note'];
  const ends = (name: string, minor: (typeof bars)[number]['minor'] | undefined) =>
    minor === undefined ? [] : [[name, fromMinor(minor, currency), '', '', '', '', '']];
  const rows = bars.map(({ line, minor, from, to, times, cause }) => [
    textCell(nameOf(line)),
    fromMinor(minor, currency),
    Number(from.toFixed(4)),
    Number(to.toFixed(4)),
    Number(times.toFixed(4)),
    cause === null ? '' : textCell(causeOf(cause.cause)),
    textCell(cause?.note ?? ''),
  ]);
  return [
    header,
    ...ends('Profit as quoted', bridge?.from),
    ...rows,
    ...ends('Profit as it came', bridge?.to),
  ]
    .map((cells) => `${cells.join(',')}\r\n`)
    .join('');
}
