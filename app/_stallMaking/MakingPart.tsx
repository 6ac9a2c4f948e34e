'use client';

import type { ComponentProps } from 'react';
import { useWorkspace } from '@/app/_documents/useWorkspace';
import { MakingSection } from './MakingSection';

/** What is pressed for a stall day, as a section of its screen. */
export function MakingPart(props: Omit<ComponentProps<typeof MakingSection>, 'workspace'>) {
  const workspace = useWorkspace();
  const { workshop } = workspace;
  return workshop === null ? null : <MakingSection workspace={{ ...workspace, workshop }} {...props} />;
}
