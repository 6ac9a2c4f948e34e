'use client';

import { type ReactNode, useState } from 'react';
import { useGoToHashIn } from '@/app/_controls/useGoToHash';
import type { Lazy } from '@/app/_network/lazy';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLazy } from '@/app/_network/useLazy';
import type { WorkshopFields } from './workshopFields';

type FetchedFieldsProps = Readonly<{
  part: Lazy<(props: Readonly<{ fields: WorkshopFields }>) => ReactNode>;
  /** “The part with the free blocks”. */
  what: string;
  fields: WorkshopFields;
}>;

/** Fields that are typed once or seldom, whose code comes behind what is seen first. */
export function FetchedFields({ part, what, fields }: FetchedFieldsProps) {
  const fetched = useLazy(part);
  const [here, setHere] = useState<HTMLElement | null>(null);
  useGoToHashIn(here);
  if (fetched.kind === 'missing') return <PartMissing what={what} missing={fetched} />;
  if (fetched.kind === 'coming') return null;
  return (
    <div ref={setHere}>
      <fetched.value fields={fields} />
    </div>
  );
}
