import type { JobInput } from '@/shared/schemas/request';

/** A job made another way, to be laid beside it. */
export type CurveVariant =
  | { readonly kind: 'sheet'; readonly sheetId: string }
  | { readonly kind: 'blank'; readonly lineId: string; readonly blankId: string }
  | { readonly kind: 'without'; readonly lineId: string; readonly placementId: string };

/** @returns the documents with the one thing changed. */
export function variantOf(input: JobInput, variant: CurveVariant): JobInput {
  const { job } = input;
  switch (variant.kind) {
    case 'sheet':
      return { ...input, job: { ...job, sheetId: variant.sheetId } };
    case 'blank':
      return {
        ...input,
        job: {
          ...job,
          lines: job.lines.map((line) =>
            line.id === variant.lineId ? { ...line, blankId: variant.blankId } : line,
          ),
        },
      };
    case 'without':
      return {
        ...input,
        job: {
          ...job,
          lines: job.lines.map((line) =>
            line.id === variant.lineId
              ? { ...line, placements: line.placements.filter(({ id }) => id !== variant.placementId) }
              : line,
          ),
        },
      };
    default:
      return variant satisfies never;
  }
}
