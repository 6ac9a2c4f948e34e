/** Fetches what reads and draws pictures: much code, and not needed before a placement is unfolded. */
export const fetchArtworkPicture = () =>
  import('./ArtworkPicture').then(({ ArtworkPicture }) => ({ default: ArtworkPicture }));
