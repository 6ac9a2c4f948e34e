import type { Workspace } from '@/app/_documents/useWorkspace';

/** @returns whether nothing that counts is here: no draft, nothing noted, nothing that went out, nothing unread. */
export const isNothingHere = ({
  documents,
  entries,
  papers,
  unreadable,
}: Pick<Workspace, 'documents' | 'entries' | 'papers' | 'unreadable'>): boolean =>
  documents.length + unreadable.length + Object.values(entries).flat().length === 0 &&
  Object.values(papers)
    .flat()
    .every(({ withdrawn }) => withdrawn);
