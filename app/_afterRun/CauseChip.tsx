import { classes } from '@/app/_controls/classes';
import { Options } from '@/app/_fields/Options';
import { causeWords, gapWords } from '@/app/_words/afterRun/gapWords';
import type { GapLine } from '@/shared/schemas/making/runEvents';
import { type GapCause, gapCauses } from '@/shared/tables/faults';
import styles from './BridgeTable.module.css';

type CauseChipProps = Readonly<{
  line: GapLine;
  cause: GapCause | null;
  onCause: (cause: GapCause) => void;
}>;

const choices = gapCauses.map((value) => ({ value, label: causeWords[value] }));

/** The cause of a gap, as small as a word; it opens the system's own list, by tap and by key. */
export const CauseChip = ({ line, cause, onCause }: CauseChipProps) => (
  <select
    className={classes(styles.chip, cause === null && styles.unchosen)}
    aria-label={`Cause of ${gapWords[line].toLowerCase()}`}
    value={cause ?? ''}
    onChange={(event) => {
      const chosen = gapCauses.find((one) => one === event.target.value);
      if (chosen !== undefined) onCause(chosen);
    }}
  >
    {cause === null && <option value="">No cause chosen</option>}
    <Options choices={choices} />
  </select>
);
