import { useId, useRef } from 'react';
import { useTextScale } from '@/app/_ruler/useTextScale';
import { useWidth } from '@/app/_ruler/useWidth';
import type { StallPlan } from '@/app/_stallDay/stallOnScreen';
import { likeliestWords } from '@/app/_words/stall/stallPlanWords';
import { weatherLabel } from '@/app/_words/stall/weatherWords';
import type { StallDay } from '@/shared/schemas/stallDay';
import { bandsOf, toldTicks } from './bandsOf';
import styles from './WeatherBands.module.css';

type WeatherBandsProps = Readonly<{
  plan: StallPlan;
  stallDay: Pick<StallDay, 'days' | 'weathers'>;
  number: (value: number, maxDecimals?: number) => string;
  share: (value: number) => string;
}>;

/** Height of all bands together, of the thinnest, and the gap between two. A row is at least as high as its name. */
const BANDS_REM = 9.5;
const LEAST_REM = 0.4;
const BETWEEN_REM = 0.2;
/** Mean advance of a digit beneath the bands in px, rounded up, and the gap between two figures. */
const DIGIT_PX = 7.6;
const GAP_PX = 8;

/**
 * A band a weather: its height the chance, its length the profit of the advice, a black line that of the maker’s own
 * numbers. The table beside it says the same in figures.
 */
export function WeatherBands({ plan, stallDay, number, share }: WeatherBandsProps) {
  const id = useId();
  const axis = useRef<HTMLParagraphElement>(null);
  const widthPx = useWidth(axis, 480);
  const scale = useTextScale(axis);
  const { bands, all, ticks, at } = bandsOf(plan, (outcome) => weatherLabel(outcome, stallDay));
  const zero = at(0);
  const digits = Math.max(...ticks.map((tick) => number(tick, 0).length));
  return (
    <figure className={styles.figure} aria-hidden="true">
      <figcaption className={styles.title}>
        <span>height: how likely{bands.length < all && `, ${likeliestWords(bands.length, all)}`}</span>
        <span>
          bar: {plan.advice.pieces} advised, line: your {plan.mine.pieces}
        </span>
      </figcaption>
      <div className={styles.drawing}>
        <LossPattern id={`${id}-loss`} />
        <ul className={styles.bands}>
          {bands.map(({ key, weather, chance, advice, mine }) => (
            <li key={key} style={{ minBlockSize: `${(chance * BANDS_REM).toFixed(3)}rem` }}>
              <p className={styles.name}>
                <strong>{weather}</strong> <span>{share(chance)}</span>
              </p>
              <svg className={styles.row} aria-hidden="true" focusable="false">
                {ticks.map((tick) => (
                  <line
                    key={tick}
                    className={tick === 0 ? styles.zero : styles.grid}
                    x1={at(tick)}
                    x2={at(tick)}
                    y1="0"
                    y2="100%"
                  />
                ))}
                <rect
                  className={styles.band}
                  x={advice < 0 ? at(advice) : zero}
                  y="50%"
                  height={`${Math.max(LEAST_REM, chance * BANDS_REM - BETWEEN_REM).toFixed(3)}rem`}
                  width={`${Math.abs(Number.parseFloat(at(advice)) - Number.parseFloat(zero)).toFixed(3)}%`}
                  fill={advice < 0 ? `url(#${id}-loss)` : 'var(--warm)'}
                />
                <line className={styles.mine} x1={at(mine)} x2={at(mine)} y1="0" y2="100%" />
              </svg>
            </li>
          ))}
        </ul>
        <p className={styles.axis} ref={axis}>
          {toldTicks(ticks, (digits * DIGIT_PX + GAP_PX) * scale, widthPx).map((tick) => (
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

// Helpers

/** What a loss is filled with, in whichever row. */
const LossPattern = ({ id }: Readonly<{ id: string }>) => (
  <svg className={styles.pattern} width="0" height="0" aria-hidden="true" focusable="false">
    <defs>
      <pattern id={id} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <rect className={styles.lossGround} width="7" height="7" />
        <rect className={styles.lossLine} width="2" height="7" />
      </pattern>
    </defs>
  </svg>
);
