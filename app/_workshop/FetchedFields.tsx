'use client';

import type { ReactNode } from 'react';
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
  if (fetched.kind === 'missing') return <PartMissing what={what} missing={fetched} />;
  return fetched.kind === 'here' ? <fetched.value fields={fields} /> : null;
}
