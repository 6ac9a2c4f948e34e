import { barWords, fromWords, lostWords } from '@/app/_words/afterRun/gapWords';
import type { Formatter } from '@/app/_words/formatter';
import { minorWords } from '@/app/_words/orders/minorWords';
import { bridgeScale } from '@/lib/variances/bridgeScale';
import type { BridgeBar, RunResult } from '@/lib/variances/runResult';
import type { GapLine } from '@/shared/schemas/making/runEvents';
import type { GapCause } from '@/shared/tables/faults';
import styles from './BridgeTable.module.css';
import { CauseChip } from './CauseChip';

type BridgeTableProps = Readonly<{
  result: RunResult;
  formatter: Formatter;
  locale: string;
  /** Until then it is only what it would come to. */
  isClosed: boolean;
  onCause: (line: GapLine, cause: GapCause) => void;
}>;

/** From the profit as quoted to that which came, a row a reason; lines that came as planned are left out. */
export function BridgeTable({ result, formatter, locale, isClosed, onCause }: BridgeTableProps) {
  const { bridge, currency, bars } = result;
  const drawn = bars.filter(({ minor }) => minor !== 0);
  const scale = bridge === null ? null : bridgeScale(bridge, drawn);
  const words = (minor: number) => minorWords(minor, currency, locale);
  return (
    <table className={styles.bridge}>
      <caption className="visuallyHidden">From the profit as quoted to the profit as it came</caption>
      <thead>
        <tr>
          <th scope="col">
            <span className="visuallyHidden">Line</span>
          </th>
          <th scope="col">
            <span className="visuallyHidden">Drawn</span>
          </th>
          <th scope="col">{currency}</th>
          <th scope="col">cause</th>
        </tr>
      </thead>
      <tbody>
        {bridge !== null && scale !== null && (
          <tr className={styles.end}>
            <th scope="row">Profit as quoted</th>
            <td className={styles.bar}>
              <Bar {...scale.from} look="profit" isTorn={scale.isTorn} />
              {scale.isTorn && (
                <span className={styles.torn}>bars torn off: the scale begins at {words(scale.least)}</span>
              )}
            </td>
            <td className={styles.figure}>{words(bridge.from)}</td>
            <td />
          </tr>
        )}
        {drawn.map((bar, at) => {
          const across = scale?.bars[at];
          return (
            <tr key={bar.line}>
              <th scope="row">{barWords(bar, formatter, locale)}</th>
              <td className={styles.bar}>
                {across !== undefined && <Bar {...across} look={lookOf(bar)} isTorn={false} />}
              </td>
              <td className={styles.figure}>{`${bar.minor > 0 ? '+' : ''}${words(bar.minor)}`}</td>
              <td className={styles.cause}>
                {isFollowing(bar) ? (
                  <span className={styles.follows}>{followWords[bar.line]}</span>
                ) : (
                  <CauseChip
                    line={bar.line}
                    cause={bar.cause?.cause ?? null}
                    onCause={(cause) => onCause(bar.line, cause)}
                  />
                )}
                {bar.line === 'blanksUsage' && result.lost.length > 0 && (
                  <span className={styles.follows}>{lostWords(result.lost)}</span>
                )}
                {bar.actual === 'standard' && bar.line !== 'reprints' && (
                  <span className={styles.follows}>{fromWords.standard}</span>
                )}
              </td>
            </tr>
          );
        })}
        {bridge !== null && scale !== null && (
          <tr className={styles.end}>
            <th scope="row">{isClosed ? 'Profit as it came' : 'Profit if it ended now'}</th>
            <td className={styles.bar}>
              <Bar {...scale.to} look="profit" isTorn={scale.isTorn} />
            </td>
            <td className={styles.figure}>{words(bridge.to)}</td>
            <td />
          </tr>
        )}
      </tbody>
    </table>
  );
}

// Helpers

const followWords = {
  overhead: 'Follows the time; no money moves',
  reprints: 'None was needed',
  output: 'By what each size brings and takes',
} as const;

/** A bar of which there is no cause to choose. */
const isFollowing = (bar: BridgeBar): bar is BridgeBar & { line: keyof typeof followWords } =>
  bar.line === 'overhead' || bar.line === 'output' || (bar.line === 'reprints' && bar.actual === 'standard');

type Look = 'profit' | 'materials' | 'lost' | 'time' | 'house' | 'more';

function lookOf({ line, minor }: BridgeBar): Look {
  if (minor > 0) return 'more';
  if (line === 'labour') return 'time';
  if (line === 'blanksUsage') return 'lost';
  return line === 'overhead' ? 'house' : 'materials';
}

/** A torn bar begins with teeth: what stands before them is not drawn. */
const Bar = ({ x, width, look, isTorn }: { x: number; width: number; look: Look; isTorn: boolean }) => (
  <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true" focusable="false">
    <rect className={styles[look]} x={x} width={width} height="10" />
    {isTorn && (
      <polygon
        className={styles.teeth}
        points="0,0 0.9,0 0,1.25 0.9,2.5 0,3.75 0.9,5 0,6.25 0.9,7.5 0,8.75 0.9,10 0,10"
      />
    )}
  </svg>
);
