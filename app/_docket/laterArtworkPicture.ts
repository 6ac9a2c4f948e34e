import { later } from '../_network/later';

/** What reads and draws pictures: much code, and not needed before a placement is unfolded. */
export const laterArtworkPicture = later(() =>
  import('./ArtworkPicture').then(({ ArtworkPicture }) => ArtworkPicture),
);
