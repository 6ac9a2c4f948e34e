'use client';

import { useContext, useLayoutEffect, useRef, useState } from 'react';
import { RevealContext } from '@/app/_controls/reveal';
import { useJob } from '@/app/_docket/common/useJob';
import { lazy } from '@/app/_network/lazy';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLazy } from '@/app/_network/useLazy';
import { docketSections } from '@/app/_words/docket/docketSections';
import { isStanding } from '@/shared/finding';
import { SectionPlaces } from './SectionPlaces';
import { WaitingSections } from './WaitingSections';

/** Much code, and nothing to show in it before the sums are made. */
const lazyFigureSections = lazy(() =>
  import('./FigureSections').then(({ FigureSections }) => FigureSections),
);

/** The sections of figures, whose code comes while the first sums are made; behind a stop only their headings stand. */
export function LazyFigureSections({ isWanted }: Readonly<{ isWanted: boolean }>) {
  const fetched = useLazy(lazyFigureSections);
  const { findings, prices } = useJob();
  const reveal = useContext(RevealContext);
  // A price under the floor is a stop too, but one whose figures show the way out.
  const isStopped = findings.some(isStanding) && (prices.stale || prices.answer === null);
  const [isLooking, setLooking] = useState(false);
  const [turn, setTurn] = useState(reveal.turn);
  const room = useRef<HTMLDivElement>(null);
  if (!isStopped && isLooking) setLooking(false);
  if (reveal.turn !== turn) {
    setTurn(reveal.turn);
    // Rates and own prices are typed there, and may be what mends the stop.
    if (isStopped && reveal.id !== null && typedThere.test(reveal.id)) setLooking(true);
  }
  useLayoutEffect(() => {
    // Whoever types there and brings the stop about keeps the field under their hands.
    if (isStopped && room.current?.contains(document.activeElement)) setLooking(true);
  }, [isStopped]);
  const isHidden = isStopped && !isLooking;
  if (isWanted && isHidden && fetched.kind === 'coming') return <WaitingSections onLook={null} />;
  if (!isWanted || fetched.kind === 'coming') return <SectionPlaces of={figureSectionIds} />;
  if (fetched.kind === 'missing') return <PartMissing what="The part with the figures" missing={fetched} />;
  const FigureSections = fetched.value;
  return (
    <>
      {isHidden && <WaitingSections onLook={() => setLooking(true)} />}
      {/* Hidden, not taken away: nothing half typed is lost. */}
      <div hidden={isHidden} ref={room}>
        <FigureSections />
      </div>
    </>
  );
}

// Helpers

const figureSectionIds = docketSections
  .map(({ id }) => id)
  .filter((id) => id !== 'the-job' && id !== 'checks');
const typedThere = /^(job-rates|job-ownRows|job-lines-\d+-(ownPrices|selling)|workshop)/;
