import { snapshotOf } from '@/lib/stored/documentChange';
import type { Stored } from '@/shared/schemas/stored';
import type { Replacement } from './replaceAll';

/** @returns a document as it takes the place of what is there. */
export const arriving = (document: Stored): Replacement['documents'][number] => ({
  id: document.id,
  kind: document.kind,
  snapshot: snapshotOf(document),
});
