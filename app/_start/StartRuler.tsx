import { HeatStop } from '@/app/_ruler/HeatStop';
import type { Offer } from '@/lib/price/offer';
import type { RulerMark } from '@/lib/price/rulerMarks';
import { formatMinor, fromMinor, toMinor } from '@/shared/money';
import styles from './StartPrice.module.css';

type StartRulerProps = Readonly<{
  marks: readonly RulerMark[];
  offer: Offer;
  currency: string;
  locale: string;
}>;

const WIDTH = 300;

const names = {
  outOfPocketFloor: 'out of pocket',
  variableFloor: 'with your hands',
  fullCost: 'full cost',
  target: 'target',
  ceiling: 'most they pay',
} as const;

/** What the price stands on, on one bar from cold to hot; the figures are beneath it, in words. */
export function StartRuler({ marks, offer, currency, locale }: StartRulerProps) {
  const price = fromMinor(offer.lines[0]?.eachWithoutTax ?? toMinor(0, currency), currency);
  const end = Math.max(price, ...marks.map(({ each }) => each)) * 1.12;
  const x = (amount: number) => Math.round((Math.max(0, amount) / end) * WIDTH);
  return (
    <>
      <svg className={styles.ruler} viewBox={`-4 0 ${WIDTH + 8} 34`} aria-hidden="true" focusable="false">
        <defs>
          <linearGradient id="start-heat">
            <HeatStop heat="cold" offset="0" />
            <HeatStop heat="tepid" offset="0.45" />
            <HeatStop heat="warm" offset="0.65" />
            <HeatStop heat="hot" offset="0.85" />
            <HeatStop heat="scorch" offset="1" />
          </linearGradient>
        </defs>
        <rect x="0" y="13" width={WIDTH} height="13" rx="6.5" fill="url(#start-heat)" />
        {marks.map(({ id, each }) => (
          <path key={id} className={styles.tick} d={`M${x(each)} 10V29`} />
        ))}
        <path className={styles.flag} d={`M${x(price) - 7} 0H${x(price) + 7}L${x(price)} 12Z`} />
      </svg>
      <dl className={styles.marks}>
        {marks.map(({ id, each }) => (
          <div key={id}>
            <dt>{names[id]}</dt>
            <dd>{formatMinor(toMinor(each, currency), currency, locale)}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}
