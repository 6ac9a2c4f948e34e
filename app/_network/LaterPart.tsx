'use client';

import { type ReactNode, useState } from 'react';
import { useGoToHashIn } from '@/app/_controls/useGoToHash';
import type { Lazy } from './lazy';
import { PartMissing } from './PartMissing';
import { useLazy } from './useLazy';

type LaterPartProps<Props> = Readonly<{
  part: Lazy<(props: Props) => ReactNode>;
  /** What it is, as a sentence begins: “The papers”. */
  what: string;
  props: Props;
  /** Stands in its place until it is here. */
  before?: ReactNode;
  id?: string;
}>;

/** A part of a screen whose code comes behind what is seen first; an address that names a place in it leads there once it is here. */
export function LaterPart<Props extends object>({ part, what, props, before, id }: LaterPartProps<Props>) {
  const fetched = useLazy(part);
  const [here, setHere] = useState<HTMLElement | null>(null);
  useGoToHashIn(here);
  if (fetched.kind === 'missing') return <PartMissing what={what} missing={fetched} />;
  if (fetched.kind === 'coming') return before ?? null;
  return (
    <div ref={setHere} id={id}>
      <fetched.value {...props} />
    </div>
  );
}
