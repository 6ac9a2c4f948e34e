'use client';

import { AboutArtwork } from '@/app/_docket/artwork/AboutArtwork';
import { LazyArtworkPicture } from '@/app/_docket/artwork/LazyArtworkPicture';
import { Fieldsets } from '@/app/_docket/common/Fieldsets';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { placementLineWords } from '@/app/_words/docket/placementLineWords';
import { formatterFor } from '@/app/_words/formatter';
import type { Line } from '@/shared/schemas/job';
import { PlacementActions } from './PlacementActions';
import styles from './PlacementBody.module.css';
import { PlacementPrint } from './PlacementPrint';
import { PlacementRecipe } from './PlacementRecipe';
import { PlacementSteps } from './PlacementSteps';
import { PlacementWork } from './PlacementWork';

type PlacementBodyProps = Readonly<{ line: Line; lineIndex: number; index: number }>;

/** What a print of a piece unfolds to: what is printed, how it is pressed and what it takes. */
export function PlacementBody({ line, lineIndex, index }: PlacementBodyProps) {
  const { input } = useJob();
  const formatter = formatterFor(useTextContext());
  const placement = line.placements[index];
  if (placement === undefined) return null;
  const part = { placement, path: ['lines', lineIndex, 'placements', index] };
  return (
    <>
      <p className={styles.words}>{placementLineWords(placement, input, formatter)}</p>
      <Fieldsets>
        <PlacementPrint {...part} />
        <LazyArtworkPicture key={placement.artworkId} {...part} />
        <AboutArtwork {...part} />
        <PlacementRecipe {...part} />
        <PlacementSteps {...part} />
        <PlacementWork {...part} />
        <PlacementActions line={line} index={index} />
      </Fieldsets>
    </>
  );
}
