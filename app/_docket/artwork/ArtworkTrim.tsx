'use client';

import { Button } from '@/app/_controls/Button';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { useStudy } from '@/app/_studies/useStudy';
import { formatterFor } from '@/app/_words/formatter';
import { placementOfPicture } from '@/lib/artwork/placementOfPicture';
import { scaledToShown } from '@/lib/drafts/trimEdges';
import type { Artwork } from '@/shared/schemas/artwork';
import type { Picture } from '@/shared/schemas/picture';
import styles from './ArtworkQuestions.module.css';

type ArtworkTrimProps = Readonly<{ artwork: Artwork; artworkId: string; picture: Picture }>;

/** Offers to print a picture without its clear edges, and says before what that saves; the file stays as it is. */
export function ArtworkTrim({ artwork, artworkId, picture }: ArtworkTrimProps) {
  const { input, workspace } = useJob();
  const formatter = formatterFor(useTextContext());
  const placements = input.job.lines.flatMap((line) =>
    line.placements.filter((placement) => placement.artworkId === artworkId),
  );
  const isWorthIt =
    !picture.trimmed &&
    placements.some(({ prints, fit }) =>
      prints.some((print) => placementOfPicture(picture, print, fit).clearMm !== null),
    );
  const { newest } = useStudy('trim', isWorthIt ? input : null, { artworkId });
  if (!isWorthIt && !picture.trimmed) return null;
  const set = (trimmed: boolean) => {
    const after = { ...picture, trimmed };
    const label = trimmed
      ? `Clear edges of ${artwork.name} trimmed`
      : `Clear edges of ${artwork.name} put back`;
    const jobs = workspace.jobs.filter(({ job }) =>
      job.lines.some((line) => line.placements.some((placement) => placement.artworkId === artworkId)),
    );
    workspace.edit(label, [
      {
        do: 'change',
        kind: 'artwork',
        id: artworkId,
        to: (body) => ({ ...body, picture: body.picture && { ...body.picture, trimmed } }),
      },
      ...jobs.map(({ id }) => ({
        do: 'change' as const,
        kind: 'job' as const,
        id,
        to: (body: (typeof jobs)[number]['job']) => scaledToShown(body, artworkId, picture, after),
      })),
    ]);
  };
  if (picture.trimmed)
    return (
      <p className={styles.question}>
        It is printed without its clear edges; the file is as it was.{' '}
        <Button kind="quiet" onPress={() => set(false)}>
          Put the edges back
        </Button>
      </p>
    );
  const saving = newest?.input === input ? newest.answer : null;
  return (
    <p className={styles.question}>
      Its clear edges take paper and print nothing. {saving !== null && formulaWords(saving)}{' '}
      <Button onPress={() => set(true)}>Trim the clear edges</Button>
    </p>
  );

  function formulaWords({ sheetsLess, saved }: NonNullable<typeof saving>): string {
    if (saved < 0.005) return 'In this job trimming them saves nothing: the sheets stay as many.';
    const sheets = sheetsLess >= 0.5 ? `${formatter.count(Math.round(sheetsLess), 'sheet')} and ` : '';
    return `Trimming them saves ${sheets}${formatter.money(saved)} in this job.`;
  }
}
