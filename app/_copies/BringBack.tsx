'use client';

import type { Workspace } from '@/app/_documents/useWorkspace';
import { Arrived } from './Arrived';
import { BringIn } from './BringIn';
import { useArriving } from './useArriving';
import { useCopyStore } from './useCopyStore';

/** Brings a copy back where nothing is here. */
export function BringBack({ workspace }: Readonly<{ workspace: Workspace }>) {
  const store = useCopyStore(workspace);
  // There is nothing that could be copied first.
  const arriving = useArriving({ ...store, saveFirst: async () => 'whole' });
  return (
    <>
      <BringIn arriving={arriving} button="Bring a copy back" kind="strong" />
      <Arrived arriving={arriving} level={2} />
    </>
  );
}
