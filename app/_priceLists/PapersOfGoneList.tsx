'use client';

import { useState } from 'react';
import type { IssuedVersions } from '@/app/_documents/issuedVersions';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { PaperPart } from './PaperPart';
import { paperOfLocale } from './paperOfLocale';

type PapersOfGoneListProps = Readonly<{ issued: IssuedVersions; workspace: ReadyWorkspace }>;

/** What went out of a list that is not here any more: as it was, to be looked at and printed. */
export function PapersOfGoneList({ issued, workspace }: PapersOfGoneListProps) {
  const [size, setSize] = useState(paperOfLocale(workspace.workshop.locale));
  const [chosen, setChosen] = useState<string | null>(null);
  const all = [...issued.versions, ...issued.withdrawn];
  const shown = all.find(({ id }) => id === chosen) ?? issued.newest ?? all.at(-1) ?? null;
  return (
    <PaperPart
      issued={issued}
      draftName={null}
      workspace={workspace}
      shown={shown}
      onShow={setChosen}
      version={shown?.body ?? null}
      size={size}
      onSize={setSize}
      isBusy={false}
    />
  );
}
