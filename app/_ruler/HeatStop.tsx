import styles from './HeatStop.module.css';

/** From the least to the most. */
export const heats = ['cold', 'cool', 'tepid', 'warm', 'hot', 'scorch'] as const;

export type Heat = (typeof heats)[number];

type HeatStopProps = Readonly<{
  heat: Heat;
  /** Where along the bar, as a share of its width: `50%` or `0.5`. */
  offset: string;
}>;

/** One shade of the bar of a ruler. */
export const HeatStop = ({ heat, offset }: HeatStopProps) => (
  <stop offset={offset} className={styles[heat]} />
);
