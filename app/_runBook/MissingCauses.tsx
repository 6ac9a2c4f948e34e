'use client';

import { useMemo, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { notNotedWords } from '@/app/_words/orders/notes/orderNoteWords';
import { sayWhy, tappedWords, withoutCauseWords } from '@/app/_words/press/pressWords';
import type { RunFacts } from '@/lib/making/runFacts';
import { causeNamed } from '@/lib/pressing/causeNamed';
import { foldPressings } from '@/lib/pressing/foldPressings';
import type { PressedEntry } from '@/lib/pressing/pressedEntry';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import type { PressFault } from '@/shared/tables/faults';
import { CauseList } from './CauseList';
import styles from './CauseList.module.css';

type MissingCausesProps = Readonly<{
  workspace: Pick<ReadyWorkspace, 'note'>;
  facts: Pick<RunFacts, 'pressings' | 'blankFaults'>;
  frozen: RunStandard;
}>;

/** Away from the press: why pieces were lost that nobody said of yet; nothing where every one has its cause. */
export function MissingCauses({ workspace, facts, frozen }: MissingCausesProps) {
  const { pressings, blankFaults } = facts;
  const run = useMemo(() => foldPressings(frozen, pressings, blankFaults), [frozen, pressings, blankFaults]);
  const [isOpen, setOpen] = useState(false);
  const [problem, setProblem] = useState('');
  const many = run.withoutCause.length;
  // Opened, it stays and says that the last was named.
  if (many === 0 && !isOpen) return null;
  const name = (entry: PressedEntry, fault: PressFault) => {
    const noted = causeNamed(entry, fault);
    const { state } = workspace.note(tappedWords(noted[1].body), noted);
    setProblem(state === 'shown' ? '' : notNotedWords(state));
  };
  return (
    <div className={styles.missing}>
      {many > 0 && <p>{withoutCauseWords(many)}</p>}
      <Button expanded={isOpen} onPress={() => setOpen(!isOpen)}>
        {sayWhy}
      </Button>
      {isOpen && <CauseList run={run} onName={name} />}
      <p role="alert">{problem}</p>
    </div>
  );
}
