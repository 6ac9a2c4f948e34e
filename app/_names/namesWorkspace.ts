import type { Workspace } from '@/app/_documents/useWorkspace';
import type { Workshop } from '@/shared/schemas/workshop';

/** What the names of an order are shown from and changed by. */
export type NamesWorkspace = Pick<
  Workspace,
  'blanks' | 'changeOrder' | 'customers' | 'edit' | 'jobs' | 'orders' | 'readFile' | 'undo' | 'undoLabel'
> & { readonly workshop: Workshop };
