import { costFactsOf } from '@/lib/costing/costFactsOf';
import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { placementPlaces } from '@/lib/job/places';
import { scaledSize } from '@/lib/job/tidyLength';
import { sizeSweetSpots } from '@/lib/packing/equal/sizeSweetSpots';
import type { LeverDraft } from './lever';

/** Changes of what is printed: its size, how spares are printed, the order of the presses, how many there are. */
export function printLevers(costed: CostedJob, grid: Grid): readonly LeverDraft[] {
  return [...placementDrafts(costed), ...orderDrafts(costed, grid)];
}

function placementDrafts({ laidOut }: CostedJob): readonly LeverDraft[] {
  const { job, prints } = laidOut;
  return placementPlaces(job).flatMap((place): readonly LeverDraft[] => {
    const { placement } = place.placed;
    const facts = { line: place.line.line.name, placement: placement.name };
    const printed = prints.filter(
      ({ lineId, placementId }) => lineId === place.line.line.id && placementId === placement.id,
    );
    // A roll is cut anywhere: no size fills it better.
    const smaller = (job.sheet.form === 'roll' ? [] : printed).flatMap(
      ({ print, widthMm, heightMm, perSheet }): readonly LeverDraft[] => {
        const spot = sizeSweetSpots({
          sheetWidthMm: job.sheet.widthMm,
          sheetHeightMm: job.sheet.heightMm,
          marginMm: job.printer.marginMm,
          gutterMm: job.workshop.policy.gutterMm,
          pieceWidthMm: widthMm,
          pieceHeightMm: heightMm,
        }).find(({ scale, count }) => scale < 1 && count > perSheet);
        if (spot === undefined) return [];
        const size = scaledSize({ widthMm, heightMm }, spot.scale, job.workshop.units.length);
        return [
          {
            id: 'smallerPrint',
            facts: { ...facts, ...size, fromWidthMm: widthMm, fromHeightMm: heightMm, perSheet: spot.count },
            changes: [
              place.change(['prints', print, 'widthMm'], size.widthMm),
              place.change(['prints', print, 'heightMm'], size.heightMm),
            ],
          },
        ];
      },
    );
    const isAlone = placement.replacements === 'alone' && printed.some(({ perSheet }) => perSheet > 1);
    return [
      ...smaller,
      ...(isAlone
        ? [{ id: 'gangReplacements', facts, changes: [place.change(['replacements'], 'ganged')] } as const]
        : []),
    ];
  });
}

function orderDrafts(costed: CostedJob, grid: Grid): readonly LeverDraft[] {
  const { lines } = costed.laidOut.job;
  const orders = costFactsOf(costed, grid).pressOrders;
  return lines.flatMap(({ line }, index): readonly LeverDraft[] => {
    const path = ['lines', index, 'placements'];
    const change = (value: unknown) => [{ document: 'job', path, value } as const];
    if (line.placements.length < 2) return [];
    const order = orders.find(({ lineId }) => lineId === line.id)?.cheaperOrder ?? [];
    const reordered = order.flatMap((id) => line.placements.find((placement) => placement.id === id) ?? []);
    const [first] = reordered;
    return [
      ...(first === undefined
        ? []
        : [
            {
              id: 'pressOrder',
              facts: { line: line.name, first: first.name },
              changes: change(reordered),
            } as const,
          ]),
      ...line.placements.map(
        (dropped): LeverDraft => ({
          id: 'onePlacementLess',
          facts: { line: line.name, placement: dropped.name },
          changes: change(line.placements.filter((placement) => placement !== dropped)),
        }),
      ),
    ];
  });
}
