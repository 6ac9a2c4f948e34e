import type { RunStandard } from '@/shared/schemas/making/runPapers';
import type { StockNeed } from './reserved';

/**
 * What a run that has begun is going to use: all blanks laid out for it, spares among them, and its sheets.
 *
 * @param standard as it was frozen; whatever its job became since
 */
export const standardNeeds = ({
  runId,
  issuedOn,
  works,
}: Pick<RunStandard, 'runId' | 'issuedOn' | 'works'>): readonly StockNeed[] =>
  works.flatMap(({ jobId, orderId, lines, sheets }) => {
    const need = { jobId, orderId, by: { kind: 'run', id: runId }, day: issuedOn, place: 0 } as const;
    const blanks = lines
      .filter(({ isBrought }) => !isBrought)
      .flatMap(({ blankId, sizes }) =>
        sizes.map(
          ({ size, take }): StockNeed => ({
            ...need,
            item: { kind: 'blank', blankId, size },
            quantity: take,
          }),
        ),
      );
    return [
      ...blanks,
      {
        ...need,
        item: { kind: 'paper', sheetId: sheets.sheetId },
        quantity: sheets.quantity * (sheets.metresEach ?? 1),
      },
    ];
  });
