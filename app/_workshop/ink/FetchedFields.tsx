import type { ReactNode } from 'react';
import { LaterPart } from '@/app/_network/LaterPart';
import type { Lazy } from '@/app/_network/lazy';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';

type FetchedFieldsProps = Readonly<{
  part: Lazy<(props: Readonly<{ fields: WorkshopFields }>) => ReactNode>;
  /** “The part with the free blocks”. */
  what: string;
  fields: WorkshopFields;
}>;

/** Fields that are typed once or seldom, whose code comes behind what is seen first. */
export const FetchedFields = ({ fields, ...rest }: FetchedFieldsProps) => (
  <LaterPart {...rest} props={{ fields }} />
);
