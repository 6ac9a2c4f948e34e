'use client';

import { Button } from '@/app/_controls/Button';
import { Fieldset } from '@/app/_docket/common/Fieldset';
import { fieldId } from '@/app/_docket/common/fieldId';
import { placementPrints } from '@/app/_docket/common/placementPrints';
import type { PlacementProps } from '@/app/_docket/common/placementProps';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { approvedVersionOf } from '@/lib/job/approvedVersionOf';
import { ArtworkFacts } from './ArtworkFacts';
import { ArtworkInk } from './ArtworkInk';
import { ArtworkIntake } from './ArtworkIntake';
import styles from './ArtworkPicture.module.css';
import { ArtworkPrint } from './ArtworkPrint';
import { ArtworkQuestions } from './ArtworkQuestions';
import { ArtworkTrim } from './ArtworkTrim';
import { withoutPicture } from './takePicture';
import { usePictureIntake } from './usePictureIntake';

/** The picture of a placement: brought in, shown on the cloth, and told of. */
export function ArtworkPicture({ placement, path }: PlacementProps) {
  const { input, workspace, notes } = useJob();
  const { locale } = useTextContext();
  const { artworkId } = placement;
  const artwork = input.artworks[artworkId];
  const name = artwork?.name ?? '';
  const printWidthMm = Math.max(...placement.prints.map(({ widthMm }) => widthMm));
  const approved = approvedVersionOf(input, artworkId);
  const reader = usePictureIntake({ workspace, artworkId, name, approved, printWidthMm, locale });
  if (artwork === undefined) return null;
  const { picture } = artwork;
  const own = [...path, 'artwork', 'picture'];
  const { issue } = notes(own);
  const prints = placementPrints(input.job, placement.id);
  return (
    <Fieldset name={`The picture, ${name}`}>
      <div className={styles.whole} id={fieldId(own)}>
        <ArtworkIntake reader={reader} artworkName={name} hasPicture={picture !== null} />
        {issue !== undefined && <p className={styles.issue}>{issue}</p>}
        {picture !== null && (
          <>
            <div className={styles.shown}>
              <ul className={styles.prints}>
                {prints.map((print) => (
                  <ArtworkPrint key={print.index} placement={placement} picture={picture} print={print} />
                ))}
              </ul>
              <ArtworkInk
                artwork={artwork}
                artworkId={artworkId}
                picture={picture}
                onReadAgain={() => void reader.again(picture)}
              />
            </div>
            <ArtworkTrim artwork={artwork} artworkId={artworkId} picture={picture} />
            <ArtworkQuestions artworkId={artworkId} name={name} picture={picture} />
            <ArtworkFacts picture={picture} />
            <div>
              <Button
                kind="quiet"
                onPress={() =>
                  workspace.changeArtwork(artworkId, `Took the picture out of ${name}`, (body) =>
                    withoutPicture(body, null, approved),
                  )
                }
              >
                Take the picture out and enter figures by hand
              </Button>
            </div>
          </>
        )}
      </div>
    </Fieldset>
  );
}
