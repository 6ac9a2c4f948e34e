import type { ShownPaper } from '@/app/_store/happenedState';
import { sameItems } from '@/app/_store/sameItems';
import { byNumber, newestVersion } from '@/lib/priceLists/versionOrder';
import type { PriceListVersion } from '@/shared/schemas/priceList';

/** A version of a price list as the paper it is. */
export type VersionPaper = ShownPaper<'priceListVersion', PriceListVersion>;

/** What went out of one price list. */
export interface IssuedVersions {
  /** In force, oldest first by number. */
  readonly versions: readonly VersionPaper[];
  /** Taken out of force; their numbers stay used. */
  readonly withdrawn: readonly VersionPaper[];
  /** The one in force that went out last. */
  readonly newest: VersionPaper | null;
}

export const noneIssued: IssuedVersions = { versions: [], withdrawn: [], newest: null };

/**
 * Sorts papers by the list they were made from, lists that are gone among them.
 *
 * @param before as they were sorted last; what did not change is taken from it
 */
export function issuedByList(
  papers: readonly VersionPaper[],
  before: ReadonlyMap<string, IssuedVersions>,
): ReadonlyMap<string, IssuedVersions> {
  const ids = [...new Set(papers.map(({ about }) => about.id))];
  return new Map(
    ids.map((id) => {
      const own = papers.filter(({ about }) => about.id === id).sort(byNumber);
      const known = before.get(id);
      const versions = sameItems(
        known?.versions,
        own.filter(({ withdrawn }) => !withdrawn),
      );
      const withdrawn = sameItems(
        known?.withdrawn,
        own.filter((paper) => paper.withdrawn),
      );
      return known !== undefined && versions === known.versions && withdrawn === known.withdrawn
        ? [id, known]
        : [id, { versions, withdrawn, newest: newestVersion(versions) }];
    }),
  );
}
