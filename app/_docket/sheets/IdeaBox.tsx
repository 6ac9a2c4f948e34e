import type { SheetIdea } from './bestIdea';
import styles from './IdeaBox.module.css';
import { SheetIdeaRow } from './SheetIdeaRow';

type IdeaBoxProps = Readonly<{
  idea: SheetIdea;
  /** True while the idea may be of another job or another layout than the one that is shown. */
  isWaiting: boolean;
  stale: boolean;
}>;

/** The idea that saves most; while it is looked for anew the box keeps its size, so that nothing moves. */
export const IdeaBox = ({ idea, isWaiting, stale }: IdeaBoxProps) =>
  isWaiting ? (
    <div className={styles.waiting}>
      <p>Looking for ideas…</p>
      <div className={styles.held} aria-hidden="true" inert>
        <SheetIdeaRow of={idea} stale />
      </div>
    </div>
  ) : (
    <div className={styles.best}>
      <SheetIdeaRow of={idea} stale={stale} />
    </div>
  );
