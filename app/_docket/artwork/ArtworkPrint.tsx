'use client';

import { useMemo } from 'react';
import type { PrintOfPlacement } from '@/app/_docket/common/placementPrints';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { FigureButton } from '@/app/_trace/FigureButton';
import { TracePanel } from '@/app/_trace/TracePanel';
import { useOpenFigure } from '@/app/_trace/useOpenFigure';
import { pictureWords } from '@/app/_words/docket/pictureWords';
import { sizesWords } from '@/app/_words/docket/sizesWords';
import { formatterFor } from '@/app/_words/formatter';
import { wholePpi } from '@/app/_words/wholePpi';
import { placementOfPicture } from '@/lib/artwork/placementOfPicture';
import { shownPicture } from '@/lib/artwork/shownPicture';
import { inkOfPrint } from '@/lib/grid/inkOfPrint';
import type { Placement } from '@/shared/schemas/job';
import type { Picture } from '@/shared/schemas/picture';
import { ArtworkPreview } from './ArtworkPreview';
import styles from './ArtworkPrint.module.css';

type ArtworkPrintProps = Readonly<{ placement: Placement; picture: Picture; print: PrintOfPlacement }>;

/** One print of a picture: how it looks on the cloth, how sharp it comes out, and the ink it takes. */
export function ArtworkPrint({
  placement,
  picture,
  print: { print, lineId, slot, sizes },
}: ArtworkPrintProps) {
  const { input, figures } = useJob();
  const formatter = formatterFor(useTextContext());
  const opens = useOpenFigure();
  const { fit } = placement;
  const placed = useMemo(() => placementOfPicture(shownPicture(picture), print, fit), [picture, print, fit]);
  const line = input.job.lines.find(({ id }) => id === lineId);
  const blank = input.blanks[line?.blankId ?? ''];
  const ink = figures === null ? null : inkOfPrint(figures.sheet, lineId, sizes[0] ?? '', slot);
  const isOne = placement.prints.length === 1;
  const isSmaller = placed.boxShare < 0.999;
  const size = formatter.size(print.widthMm, print.heightMm);
  return (
    <li className={styles.print}>
      {blank !== undefined && (
        <ArtworkPreview
          picture={picture}
          placed={placed}
          shape={print.widthMm / print.heightMm}
          colour={blank.colour}
          says={`${placement.name} at ${size} on ${blank.name}, ${blank.colour.name}`}
        />
      )}
      <div className={styles.words}>
        <p className={styles.size}>
          {size}
          {!isOne && sizes.length > 0 && ` for ${sizesWords(sizes)}`}
        </p>
        <p className={styles.ppi}>
          {picture.format === 'svg' ? (
            'A drawing, clean at any size'
          ) : (
            <>
              {wholePpi(placed.ppi, formatter)} ppi
              {isSmaller && (
                <span className={styles.at}> at {formatter.size(placed.widthMm, placed.heightMm)}</span>
              )}
            </>
          )}
        </p>
        {pictureWords(placed, fit, formatter).map((sentence) => (
          <p key={sentence} className={styles.quiet}>
            {sentence}
          </p>
        ))}
        {ink !== null && (
          <p className={styles.ink}>
            Ink of one print:{' '}
            <FigureButton
              figure={ink.ref}
              name={`Ink of one print of ${placement.name} at ${size}`}
              text={`${formatter.number(ink.mL, 2)} mL`}
              opens={opens}
            />
            {', '}
            {formatter.smallMoney(ink.money)}
          </p>
        )}
      </div>
      {figures !== null && opens.open !== null && (
        <div className={styles.trace}>
          <TracePanel
            key={opens.open.rowId}
            id={opens.panelId}
            names={figures}
            root={opens.open}
            onClose={opens.close}
          />
        </div>
      )}
    </li>
  );
}
