'use client';

import { useEffect } from 'react';
import { appDocuments } from '@/app/_store/appDocuments';
import { CopyMakingTold } from './CopyMakingTold';
import { type CopySource, useMakingCopy } from './useMakingCopy';

type CopyOfStoreProps = Readonly<{
  /** How often a copy was asked for; each time one is made. */
  asked: number;
}>;

/** Makes a copy straight from the store: what stands between it and a screen may be what failed. */
export function CopyOfStore({ asked }: CopyOfStoreProps) {
  const { making, makeAndWait } = useMakingCopy(source);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a copy is made when it is asked for, and only then.
  useEffect(() => {
    void makeAndWait();
  }, [asked]);
  return <CopyMakingTold making={making} />;
}

// Helpers

const source: CopySource = {
  makeCopy: (what) => appDocuments().actions.makeCopy(what),
};
