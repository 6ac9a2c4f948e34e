import { lazy } from '@/app/_network/lazy';

/** What reads and draws pictures: much code, and not needed before a placement is unfolded. */
export const lazyArtworkPicture = lazy(() =>
  import('./ArtworkPicture').then(({ ArtworkPicture }) => ArtworkPicture),
);
