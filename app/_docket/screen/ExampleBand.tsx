import Link from 'next/link';
import styles from './ExampleBand.module.css';

type ExampleBandProps = Readonly<{
  /** True while the workshop is the example's too, and the maker has none of their own. */
  isFirst: boolean;
}>;

/** Says on an example that it is one, and where one's own begins. */
export const ExampleBand = ({ isFirst }: ExampleBandProps) => (
  <p className={styles.band}>
    {isFirst ? (
      <>
        This is an invented example. Change anything, or <Link href="/start">start your own workshop</Link>.
      </>
    ) : (
      <>
        This is an invented example. <Link href="/start">Start a job of your own</Link>.
      </>
    )}
  </p>
);
