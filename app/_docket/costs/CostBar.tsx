import { classes } from '@/app/_controls/classes';
import { groupInBar } from '@/app/_words/docket/costWords';
import type { CostGroupId } from '@/lib/grid/costGroups';
import styles from './CostBar.module.css';
import { groupMarks } from './costGroupMarks';

type CostBarProps = Readonly<{
  /** The dearest first; whole per cent beside the exact share. */
  groups: readonly { readonly id: CostGroupId; readonly share: number; readonly percent: number }[];
}>;

/** Parts wide enough for their name. */
const NAMED_FROM = 0.2;

/** The cost of the job as one bar; the list beneath says the same in figures. */
export function CostBar({ groups }: CostBarProps) {
  return (
    <div className={styles.bar} aria-hidden="true">
      {groups.map(({ id, share, percent }) => {
        const { family, shade } = groupMarks[id];
        return (
          // Set on the page after the first figures came, never in what the server renders.
          <span
            key={id}
            className={classes(styles.part, styles[`${family}${shade}`])}
            style={{ flexGrow: share }}
          >
            {share >= NAMED_FROM && `${groupInBar[id]} ${percent} %`}
          </span>
        );
      })}
    </div>
  );
}
