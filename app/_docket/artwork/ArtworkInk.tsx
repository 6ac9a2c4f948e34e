'use client';

import Link from 'next/link';
import { Button } from '@/app/_controls/Button';
import { OriginMark } from '@/app/_controls/OriginMark';
import { useJob } from '@/app/_docket/common/useJob';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { useTextContext } from '@/app/_fields/useTextContext';
import {
  greyWords,
  heavyWords,
  lightInkWords,
  unmeasuredGreyWords,
} from '@/app/_words/docket/inkOfPictureWords';
import { formatterFor } from '@/app/_words/formatter';
import { shownPicture } from '@/lib/artwork/shownPicture';
import { coverageTotal } from '@/lib/ink/coverageTotal';
import { totalShare, withBlackShare } from '@/lib/ink/generateBlack';
import { blackShareOf } from '@/lib/job/blackShareOf';
import type { Artwork } from '@/shared/schemas/artwork';
import type { Picture } from '@/shared/schemas/picture';
import styles from './ArtworkInk.module.css';

type ArtworkInkProps = Readonly<{
  artwork: Artwork;
  artworkId: string;
  picture: Picture;
  /** Reads the kept file once more. */
  onReadAgain: () => void;
}>;

const channels = ['cyan', 'magenta', 'yellow', 'black'] as const;
const BAR = { width: 100, height: 8 } as const;

/** The ink of a picture by channel, read from its pixels, and whose figure the costs use. */
export function ArtworkInk({ artwork, artworkId, picture, onReadAgain }: ArtworkInkProps) {
  const { workspace, input } = useJob();
  const formatter = formatterFor(useTextContext());
  const { coverage } = artwork;
  const shown = shownPicture(picture);
  const printerAt = input.workshop.printers.findIndex(({ id }) => id === input.job.printerId);
  const printer = input.workshop.printers[printerAt];
  const blackShare = blackShareOf(input);
  const inks = withBlackShare(shown.coverage, blackShare);
  const hasGrey = shown.coverage.black > 0;
  return (
    <div className={styles.ink}>
      <p>
        <strong>{formatter.share(totalShare(inks))} of ink</strong> over the picture
        {picture.trimmed && ' without its clear edges'}, read from the file
        {heavyWords(shown, blackShare, formatter)}.
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
              <rect className={styles[channel]} width={inks[channel] * BAR.width} height={BAR.height} />
            </svg>
            <span className={styles.share}>{formatter.share(inks[channel])}</span>
          </li>
        ))}
      </ul>
      {hasGrey && printer !== undefined && (
        <p>
          {greyWords(printer.name, blackShare, formatter)}{' '}
          <OriginMark origin={printer.blackShare?.origin ?? 'typical'} count={printer.blackShare?.count} />{' '}
          <Link href={`/workshop#${workshopFieldId(['printers', printerAt, 'blackShare'])}`}>
            Change it at the printer
          </Link>
        </p>
      )}
      {printer?.lightInks === true && <p>{lightInkWords(printer.name)}</p>}
      {hasGrey && picture.grey === null && (
        <p>
          {unmeasuredGreyWords}{' '}
          <Button kind="quiet" onPress={onReadAgain}>
            Read the file again
          </Button>
        </p>
      )}
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
