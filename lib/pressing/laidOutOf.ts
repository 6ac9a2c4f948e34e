import type { LaidOut } from '@/lib/job/spareStacks';
import type { RunStandard } from '@/shared/schemas/making/runPapers';

/** @returns the blanks that were laid out when a run began, in the order of its jobs */
export const laidOutOf = ({
  works,
}: Pick<RunStandard, 'works'>): readonly (LaidOut & { readonly blankName: string })[] =>
  works.flatMap(({ jobId, lines }) =>
    lines.flatMap(({ lineId, blankId, blankName, isBrought, sizes }) =>
      sizes.map(({ size, wanted, take }) => ({
        ...{ jobId, lineId, blankId, blankName, isBrought, size, wanted, take },
      })),
    ),
  );
