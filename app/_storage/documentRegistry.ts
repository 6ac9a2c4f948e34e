import { artworkWithFinest, artworkWithPicture } from '@/lib/stored/artworkSteps';
import { blankWithWrap } from '@/lib/stored/blankSteps';
import { jobWithGang, jobWithOwnPrices } from '@/lib/stored/jobSteps';
import type { Registry } from '@/lib/stored/registry';
import { workshopWithInkRecord, workshopWithPaper } from '@/lib/stored/workshopSteps';
import { type Artwork, artworkSchema } from '@/shared/schemas/artwork';
import { type Blank, blankSchema } from '@/shared/schemas/blank';
import { type Job, jobSchema } from '@/shared/schemas/job';
import { type PriceListDocument, priceListSchema } from '@/shared/schemas/priceList';
import { type Workshop, workshopSchema } from '@/shared/schemas/workshop';

/** The body of each kind of document the maker keeps. */
export type DocumentBodies = {
  readonly workshop: Workshop;
  readonly blank: Blank;
  readonly artwork: Artwork;
  readonly job: Job;
  readonly priceList: PriceListDocument;
};

/** How each kind is read today. A changed schema raises its version and brings a step from the one before. */
export const documentRegistry: Registry<DocumentBodies> = {
  workshop: {
    version: 3,
    schema: workshopSchema,
    steps: { 1: workshopWithPaper, 2: workshopWithInkRecord },
    needed: 'workshop',
  },
  blank: { version: 2, schema: blankSchema, steps: { 1: blankWithWrap } },
  artwork: { version: 3, schema: artworkSchema, steps: { 1: artworkWithPicture, 2: artworkWithFinest } },
  job: { version: 3, schema: jobSchema, steps: { 1: jobWithGang, 2: jobWithOwnPrices } },
  priceList: { version: 1, schema: priceListSchema, steps: {} },
};
