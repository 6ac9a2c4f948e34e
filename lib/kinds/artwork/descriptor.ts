import type { KindDescriptor } from '@/lib/stored/registry';
import { type Artwork, artworkSchema } from '@/shared/schemas/artwork';
import { approvalLeaves, artworkWithoutApproval } from './approvalLeaves';
import { artworkWithFinest, artworkWithGrey, artworkWithPicture } from './migrations';

export const artwork: KindDescriptor<Artwork, 'draft'> = {
  nature: 'draft',
  word: 'artwork',
  version: 5,
  schema: artworkSchema,
  steps: { 1: artworkWithPicture, 2: artworkWithFinest, 3: artworkWithoutApproval, 4: artworkWithGrey },
  partings: { 3: approvalLeaves },
  linksOf: () => [],
};
