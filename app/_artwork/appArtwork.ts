import { type ArtworkService, createArtworkService } from './artworkService';

let service: ArtworkService | null = null;

/** The one reader of pictures of this tab; its worker starts with the first picture. */
export function appArtwork(): ArtworkService {
  service ??= createArtworkService();
  return service;
}
