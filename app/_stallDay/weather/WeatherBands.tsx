import { useId } from 'react';
import type { StallPlan } from '@/app/_stallDay/stallOnScreen';
import { bandsOf } from './bandsOf';
import styles from './WeatherBands.module.css';

type WeatherBandsProps = Readonly<{
  plan: StallPlan;
  number: (value: number, maxDecimals?: number) => string;
  share: (value: number) => string;
}>;

/** Heights in px at the usual size of type: of all bands together, and of the line of figures beneath. */
const BANDS_PX = 150;
const LEAST_PX = 18;

/**
 * A band a weather: its height the chance, its length the profit of the advice, a black line that of the maker’s own
 * numbers. The table beside it says the same in figures.
 */
export function WeatherBands({ plan, number, share }: WeatherBandsProps) {
  const id = useId();
  const { bands, ticks, at, high } = bandsOf(plan, BANDS_PX, LEAST_PX);
  const zero = at(0);
  return (
    <figure className={styles.figure} aria-hidden="true">
      <figcaption className={styles.title}>
        <span>height: how likely</span>
        <span>
          bar: {plan.advice.pieces} advised, line: your {plan.mine.pieces}
        </span>
      </figcaption>
      <div className={styles.drawing}>
        <ul className={styles.names}>
          {bands.map(({ weather, chance, top, height }) => (
            <li key={weather} style={{ insetBlockStart: top, blockSize: height }}>
              <strong>{weather}</strong> <span>{share(chance)}</span>
            </li>
          ))}
        </ul>
        <svg className={styles.bands} width="100%" height={high} aria-hidden="true" focusable="false">
          <defs>
            <pattern
              id={`${id}-loss`}
              width="7"
              height="7"
              patternUnits="userSpaceOnUse"
              patternTransform="rotate(45)"
            >
              <rect className={styles.lossGround} width="7" height="7" />
              <rect className={styles.lossLine} width="2" height="7" />
            </pattern>
          </defs>
          {ticks.map((tick) => (
            <line
              key={tick}
              className={tick === 0 ? styles.zero : styles.grid}
              x1={at(tick)}
              x2={at(tick)}
              y1="0"
              y2={high}
            />
          ))}
          {bands.map(({ weather, top, height, advice, mine }) => (
            <g key={weather}>
              <rect
                className={styles.band}
                x={advice < 0 ? at(advice) : zero}
                width={`${(Math.abs(Number.parseFloat(at(advice)) - Number.parseFloat(zero))).toFixed(3)}%`}
                y={top}
                height={height}
                fill={advice < 0 ? `url(#${id}-loss)` : 'var(--warm)'}
              />
              <line className={styles.mine} x1={at(mine)} x2={at(mine)} y1={top - 1} y2={top + height + 1} />
            </g>
          ))}
        </svg>
        <p className={styles.axis}>
          {ticks.map((tick) => (
            <span key={tick} style={{ insetInlineStart: at(tick) }}>
              {number(tick, 0)}
            </span>
          ))}
        </p>
      </div>
      <p className={styles.axisTitle}>profit of the day</p>
    </figure>
  );
}
