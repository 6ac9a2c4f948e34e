import { flagCloth } from './flagCloth';
import styles from './RulerFlag.module.css';

type RulerFlagProps = Readonly<{
  ratio: number;
  text: string;
  widthPx: number;
  /** How much larger than usual the type is. */
  scale: number;
  size: 'full' | 'slim';
}>;

/** The chosen price as a flag planted on the bar; where the ruler is slim only a knob shows. */
export function RulerFlag({ ratio, text, widthPx, scale, size }: RulerFlagProps) {
  const { wide: clothPx, shift } = flagCloth({ ratio, text, widthPx, scale });
  return (
    <svg className={styles.flag} x={`${(ratio * 100).toFixed(3)}%`} overflow="visible" aria-hidden="true">
      <g transform={`scale(${scale})`}>
        {size === 'full' ? (
          <>
            <rect
              className={styles.ring}
              x={shift - clothPx / 2 - 4}
              y="-4"
              width={clothPx + 8}
              height="32"
              rx="8"
            />
            <path className={styles.ground} d="M-6.5 23h13L0 33z M-1.25 30h2.5v26h-2.5z" />
            <rect className={styles.ground} x={shift - clothPx / 2} width={clothPx} height="24" rx="5" />
            <text className={styles.text} x={shift} y="17">
              {text}
            </text>
          </>
        ) : (
          <>
            <circle className={styles.ring} cy="18" r="16" />
            <circle className={styles.rim} cy="18" r="12.5" />
            <circle className={styles.ground} cy="18" r="10" />
          </>
        )}
      </g>
    </svg>
  );
}
