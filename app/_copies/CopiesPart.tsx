'use client';

import { Button } from '@/app/_controls/Button';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { lastCopyWords } from '@/app/_words/store/copyStandingWords';
import { saveFailureWords } from '@/app/_words/store/saveFailureWords';
import { Arrived } from './Arrived';
import { BringIn } from './BringIn';
import styles from './Copies.module.css';
import { CopyMakingTold } from './CopyMakingTold';
import type { CopyStanding } from './copyStanding';
import { StorageTold } from './StorageTold';
import { useArriving } from './useArriving';
import { useCopyStanding } from './useCopyStanding';
import { useCopyStore } from './useCopyStore';
import { useMakingCopy } from './useMakingCopy';

type CopiesPartProps = Readonly<{ workspace: Workspace; level: 2 | 3 }>;

/** Everything about copies in one place: making one, and bringing one in. */
export function CopiesPart({ workspace, level }: CopiesPartProps) {
  const store = useCopyStore(workspace);
  const standing = useCopyStanding(workspace);
  const { making, make, makeFirst } = useMakingCopy(store);
  const arriving = useArriving({ ...store, saveFirst: makeFirst });
  const formatter = formatterFor(useTextContext());
  const { kept } = workspace;
  const onlyInMemory =
    kept.state === 'notKept' && (kept.why === 'noStorage' || kept.why === 'storageForbidden')
      ? kept.why
      : null;
  const Heading = level === 2 ? 'h2' : 'h3';
  return (
    <>
      <section className={styles.copies}>
        <Heading>Make a copy</Heading>
        <p className={styles.words}>
          Everything stays on this device and nowhere else. A copy is one file with your rates, blanks,
          pictures, jobs and lists; keep it on another device. {lastCopyWords(factsOf(standing), formatter)}
        </p>
        {onlyInMemory === null ? (
          <StorageTold />
        ) : (
          <p className={styles.wrong}>
            {saveFailureWords[onlyInMemory]} A copy is the only way to keep what is here.
          </p>
        )}
        <div className={styles.row}>
          <Button
            kind="strong"
            blockedBy={making.kind === 'making' ? 'The copy is being made.' : undefined}
            onPress={make}
          >
            Make a copy
          </Button>
        </div>
        <div role="status">
          <CopyMakingTold making={making} />
        </div>
      </section>
      <section className={styles.copies}>
        <Heading>Bring a file in</Heading>
        <BringIn arriving={arriving} button="Choose a file" />
        <Arrived arriving={arriving} level={level} />
      </section>
    </>
  );
}

// Helpers

function factsOf(standing: CopyStanding): { readonly daysOld: number | null; readonly hasNew: boolean } {
  switch (standing.state) {
    case 'nothingOwn':
      return { daysOld: null, hasNew: false };
    case 'never':
      return { daysOld: null, hasNew: true };
    case 'copied':
      return standing;
    default:
      return standing satisfies never;
  }
}
