'use client';

import { Button } from '@/app/_controls/Button';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { shownPicture } from '@/lib/artwork/shownPicture';
import { coverageTotal } from '@/lib/ink/coverageTotal';
import type { Artwork } from '@/shared/schemas/artwork';
import type { Picture } from '@/shared/schemas/picture';
import styles from './ArtworkInk.module.css';

type ArtworkInkProps = Readonly<{ artwork: Artwork; artworkId: string; picture: Picture }>;

const channels = ['cyan', 'magenta', 'yellow', 'black'] as const;
const BAR = { width: 100, height: 8 } as const;

/** The ink of a picture by channel, read from its pixels, and whose figure the costs use. */
export function ArtworkInk({ artwork, artworkId, picture }: ArtworkInkProps) {
  const { workspace } = useJob();
  const formatter = formatterFor(useTextContext());
  const { coverage } = artwork;
  const shown = shownPicture(picture);
  const total = coverageTotal(shown.coverage);
  return (
    <div className={styles.ink}>
      <p>
        <strong>{formatter.share(total)} of ink</strong> over the picture
        {picture.trimmed && ' without its clear edges'}, read from the file
        {shown.heavyShare > 0 && `; ${formatter.share(shown.heavyShare)} of it is heavy, over 180 %`}.
      </p>
      <ul className={styles.channels}>
        {channels.map((channel) => (
          <li key={channel} className={styles.channel}>
            <span>{channel}</span>
            <svg
              className={styles.bar}
              viewBox={`0 0 ${BAR.width} ${BAR.height}`}
              aria-hidden="true"
              preserveAspectRatio="none"
            >
              <rect className={styles.all} width={BAR.width} height={BAR.height} />
              <rect
                className={styles[channel]}
                width={shown.coverage[channel] * BAR.width}
                height={BAR.height}
              />
            </svg>
            <span className={styles.share}>{formatter.share(shown.coverage[channel])}</span>
          </li>
        ))}
      </ul>
      {coverage !== null && (
        <p className={styles.own}>
          The costs use your own figure, {formatter.share(coverageTotal(coverage))} in all.{' '}
          <Button
            kind="quiet"
            onPress={() =>
              workspace.setField(
                { kind: 'artwork', id: artworkId },
                `Ink of ${artwork.name}`,
                ['coverage'],
                null,
              )
            }
          >
            Use what was read
          </Button>
        </p>
      )}
    </div>
  );
}
