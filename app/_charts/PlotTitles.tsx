import styles from './PlotWords.module.css';

type PlotTitlesProps = Readonly<{
  upTitle: string;
  acrossTitle: string;
  letterPx: number;
  /** Where the title of the quantities ends, px. */
  right: number;
  heightPx: number;
}>;

/** What is drawn upwards, above; what is drawn across, beneath at the end. */
export function PlotTitles({ upTitle, acrossTitle, letterPx, right, heightPx }: PlotTitlesProps) {
  return (
    <>
      <text className={styles.title} x={0} y={letterPx * 0.8125}>
        {upTitle}
      </text>
      <text className={styles.title} x={right} y={heightPx - 3} textAnchor="end">
        {acrossTitle}
      </text>
    </>
  );
}
