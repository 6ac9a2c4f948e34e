'use client';

import type { Workspace } from '@/app/_documents/useWorkspace';
import { LaterPart } from '@/app/_network/LaterPart';
import { laterParts } from './laterParts';
import styles from './UnreadableRecords.module.css';

type UnreadableRecordsProps = Readonly<{
  workspace: Pick<Workspace, 'unreadable'>;
  level: 2 | 3;
  /** Only records of these kinds; left out, all of them. */
  of?: ReadonlySet<string>;
}>;

/** Records that are kept though nothing here can read them, each with its reason; nothing where all can be read. */
export function UnreadableRecords({ workspace, level, of }: UnreadableRecordsProps) {
  const unreadable = workspace.unreadable.filter(
    ({ kind }) => of === undefined || (kind !== null && of.has(kind)),
  );
  if (unreadable.length === 0) return null;
  const Heading = level === 2 ? 'h2' : 'h3';
  return (
    <section className={styles.records}>
      <Heading>Kept, but not readable</Heading>
      <LaterPart part={laterParts.unreadableList} what="The list of them" props={{ unreadable }} />
    </section>
  );
}
