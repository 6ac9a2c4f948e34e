import type { VersionPaper } from '@/app/_documents/issuedVersions';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { paperSchema } from '@/shared/schemas/happened';
import { priceListVersionSchema } from '@/shared/schemas/priceList';

/**
 * Versions whose papers do not say any more what they said when they went out. They count for nothing, and are shown
 * so that their maker can tell which they are.
 */
export const changedVersions = (
  unreadable: Workspace['unreadable'],
  listId: string,
): readonly VersionPaper[] =>
  unreadable.flatMap(({ raw, findings }): readonly VersionPaper[] => {
    const paper = findings.some(({ code }) => code === 'paperDamaged') ? paperSchema.safeParse(raw) : null;
    if (paper?.success !== true || paper.data.about.id !== listId) return [];
    const body = priceListVersionSchema.safeParse(paper.data.body);
    return body.success
      ? [{ ...paper.data, kind: 'priceListVersion', body: body.data, withdrawn: false }]
      : [];
  });
