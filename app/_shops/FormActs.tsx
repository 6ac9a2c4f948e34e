import { Button } from '@/app/_controls/Button';
import styles from './Shops.module.css';

type FormActsProps = Readonly<{
  /** What enters the form. */
  words: string;
  /** What must be said first; undefined once nothing is. */
  missing: string | undefined;
  onLeave: () => void;
}>;

/** The two ways out of a form of a shop: to note what it says, or to leave it. */
export const FormActs = ({ words, missing, onLeave }: FormActsProps) => (
  <div className={styles.acts}>
    <Button type="submit" kind="strong" blockedBy={missing}>
      {words}
    </Button>
    <Button kind="quiet" onPress={onLeave}>
      Leave it
    </Button>
  </div>
);
