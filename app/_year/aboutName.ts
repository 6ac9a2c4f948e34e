import type { RowAbout } from '@/lib/year/yearRow';
import type { YearSection } from './yearSection';

/** @returns whom or what a row is about; empty for the workshop itself. */
export function aboutName(
  about: RowAbout,
  { workspace, book }: Pick<YearSection, 'workspace' | 'book'>,
): string {
  switch (about.kind) {
    case 'order':
      return book.of(about.id)?.facts.order.name ?? 'An order that is gone';
    case 'stallDay':
      return (
        workspace.stallDays[about.id]?.name ??
        workspace.papers.dayClose.findLast(({ body }) => body.stallDayId === about.id)?.body.title ??
        'A stall day that is gone'
      );
    case 'shop':
      return workspace.shops[about.id]?.name ?? 'A shop that is gone';
    case 'supplier':
      return workspace.suppliers[about.id]?.name ?? 'A supplier that is gone';
    case 'run':
      return workspace.runs[about.id]?.name ?? 'A run that is gone';
    case 'workshop':
      return '';
    default:
      return about satisfies never;
  }
}
