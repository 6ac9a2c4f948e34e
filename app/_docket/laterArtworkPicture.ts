import { later } from '@/app/_network/later';

/** What reads and draws pictures: much code, and not needed before a placement is unfolded. */
export const laterArtworkPicture = later(() =>
  import('@/app/_docket/artwork/ArtworkPicture').then(({ ArtworkPicture }) => ArtworkPicture),
);
