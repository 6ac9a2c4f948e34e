'use client';

import Link from 'next/link';
import type { ReactNode } from 'react';
import { PageHead } from '@/app/_controls/PageHead';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { UnreadableRecords } from './UnreadableRecords';

type NotHereProps = Readonly<{
  workspace: Workspace;
  /** Of the record that the address names. */
  id: string;
  /** What it would be, as “order”. */
  what: string;
  /** True where it is known to be removed, for the screen has just done it. */
  isRemoved?: boolean;
  /** What became of it, where that is not the same as of any. */
  line?: string | undefined;
  /** Where one goes on from here. */
  back: Readonly<{ href: string; words: string }>;
  /** How it comes back. */
  aside?: ReactNode;
  children?: ReactNode;
}>;

const GONE =
  'It was removed, or is kept on another device. If you have just removed it, undo brings it back.';

/** In the place of a record: it was removed or never was here, or it cannot be read. */
export function NotHere({
  workspace,
  id,
  what,
  isRemoved = false,
  line = GONE,
  back,
  aside,
  children,
}: NotHereProps) {
  const records = workspace.unreadable.filter((record) => record.id === id);
  const isUnreadable = records.length > 0;
  return (
    <>
      <PageHead
        title={
          isUnreadable
            ? `This ${what} cannot be read`
            : `This ${what} is ${isRemoved ? 'removed' : 'not here'}`
        }
        line={
          isUnreadable
            ? 'The record stays kept as it is. Save it as a file, so that nothing of it is lost.'
            : line
        }
        aside={!isUnreadable && aside}
      />
      <UnreadableRecords workspace={{ ...workspace, unreadable: records }} level={2} />
      {children}
      <p>
        <Link href={back.href}>{back.words}</Link>
      </p>
    </>
  );
}
