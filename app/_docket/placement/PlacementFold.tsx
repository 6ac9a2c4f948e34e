'use client';

import { Fold } from '@/app/_controls/Fold';
import { SeverityShape } from '@/app/_controls/SeverityShape';
import { AboutArtwork } from '@/app/_docket/artwork/AboutArtwork';
import { LazyArtworkPicture } from '@/app/_docket/artwork/LazyArtworkPicture';
import { Fieldsets } from '@/app/_docket/common/Fieldsets';
import { fieldId } from '@/app/_docket/common/fieldId';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { placementLineWords } from '@/app/_words/docket/placementLineWords';
import { formatterFor } from '@/app/_words/formatter';
import type { Line, Placement } from '@/shared/schemas/job';
import { PlacementActions } from './PlacementActions';
import styles from './PlacementFold.module.css';
import { PlacementPrint } from './PlacementPrint';
import { PlacementRecipe } from './PlacementRecipe';
import { PlacementSteps } from './PlacementSteps';
import { PlacementWork } from './PlacementWork';

type PlacementFoldProps = Readonly<{ line: Line; lineIndex: number; index: number }>;

/** One print of a piece under one line; unfolds to what is printed, how it is pressed and what it takes. */
export function PlacementFold({ line, lineIndex, index }: PlacementFoldProps) {
  const { input, worries } = useJob();
  const formatter = formatterFor(useTextContext());
  const placement: Placement | undefined = line.placements[index];
  if (placement === undefined) return null;
  const path = ['lines', lineIndex, 'placements', index];
  const { stops, cautions } = worries(path);
  const worst = stops > 0 ? 'stop' : 'caution';
  const count = stops > 0 ? stops : cautions;
  const part = { placement, path };
  return (
    <Fold
      id={fieldId(path)}
      holds={[fieldId(path)]}
      summary={placement.name}
      line={placementLineWords(placement, input, formatter)}
      aside={
        count > 0 && (
          <span className={styles.worry}>
            <SeverityShape severity={worst} />
            {count} <span className={styles.what}>{count === 1 ? worst : `${worst}s`}</span>
          </span>
        )
      }
    >
      <Fieldsets>
        <PlacementPrint {...part} />
        <LazyArtworkPicture key={placement.artworkId} {...part} />
        <AboutArtwork {...part} />
        <PlacementRecipe {...part} />
        <PlacementSteps {...part} />
        <PlacementWork {...part} />
        <PlacementActions line={line} index={index} />
      </Fieldsets>
    </Fold>
  );
}
