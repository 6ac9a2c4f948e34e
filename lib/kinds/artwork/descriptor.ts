import type { KindDescriptor } from '@/lib/stored/registry';
import { type Artwork, artworkSchema } from '@/shared/schemas/artwork';
import { artworkWithFinest, artworkWithPicture } from './migrations';

export const artwork: KindDescriptor<Artwork, 'draft'> = {
  nature: 'draft',
  word: 'artwork',
  version: 3,
  schema: artworkSchema,
  steps: { 1: artworkWithPicture, 2: artworkWithFinest },
  linksOf: () => [],
};
