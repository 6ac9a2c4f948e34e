import type { JobRecord } from '@/app/_documents/documentsByKind';
import type { DocumentBodies } from '@/lib/kinds/kinds';
import { nameListDifferences, nameListText } from '@/lib/names/nameListText';
import type { Edit } from '@/lib/stored/prepareEdit';
import type { Blank } from '@/shared/schemas/blank';
import type { Line } from '@/shared/schemas/job';
import { type NameRow, type Order, type OrderLine, orderLineSchema } from '@/shared/schemas/order';

type Place = Pick<OrderLine, 'jobId' | 'lineId'>;

/** One thing that is made for an order, with the names of those who get it. */
export interface NamedLine {
  readonly jobId: string;
  readonly line: Line;
  /** Null where the blank is gone. */
  readonly blank: Blank | null;
  readonly rows: readonly NameRow[];
}

/** Changes the rows of a line; it is asked with those that the order has when it is written. */
export type ChangeOfNames = (rows: readonly NameRow[]) => readonly NameRow[];

/** @returns what is made for an order, in the order of its jobs. */
export function namedLines(
  order: Order,
  jobs: readonly JobRecord[],
  blanks: Readonly<Record<string, Blank>>,
): readonly NamedLine[] {
  return order.jobIds.flatMap((jobId) =>
    (jobs.find(({ id }) => id === jobId)?.job.lines ?? []).map((line) => ({
      ...{ jobId, line, blank: blanks[line.blankId] ?? null },
      rows: order.lines.find((own) => own.jobId === jobId && own.lineId === line.id)?.names ?? noRows,
    })),
  );
}

/** Names of what is made no more: the maker took the job out, or its line, and the names were kept. */
export const strayLines = (order: Order, lines: readonly NamedLine[]): readonly OrderLine[] =>
  order.lines.filter(
    ({ jobId, lineId, names }) =>
      names.length > 0 && !lines.some((one) => one.jobId === jobId && one.line.id === lineId),
  );

/** Whether the job prints names, and those of the order. */
export function printedNames({ line, rows }: Pick<NamedLine, 'line' | 'rows'>): 'none' | 'same' | 'others' {
  if (line.nameList.trim() === '') return 'none';
  const { onlyInList, onlyInRows } = nameListDifferences(line.nameList, rows);
  return onlyInList.length + onlyInRows.length === 0 ? 'same' : 'others';
}

/** What else is written with a change of names. */
interface AlsoWritten {
  readonly quantities?: Line['quantities'] | undefined;
  /** Whether the job prints the names; what printed them as they were goes on doing so without being asked. */
  readonly isPrinted?: boolean | undefined;
}

/** @returns a change of the names of a line as one step, with what follows from it in the job. */
export function namesEdits(
  orderId: string,
  named: NamedLine,
  to: ChangeOfNames,
  { quantities, isPrinted = printedNames(named) === 'same' }: AlsoWritten = {},
): readonly Edit<DocumentBodies>[] {
  const { jobId, line, rows } = named;
  const list = isPrinted ? nameListText(to(rows)) : line.nameList;
  const ofOrder: Edit<DocumentBodies> = {
    do: 'change',
    kind: 'order',
    id: orderId,
    to: (order) => withNames(order, { jobId, lineId: line.id }, to),
  };
  if (quantities === undefined && list === line.nameList) return [ofOrder];
  const ofJob: Edit<DocumentBodies> = {
    do: 'change',
    kind: 'job',
    id: jobId,
    to: (job) => ({
      ...job,
      lines: job.lines.map((one) =>
        one.id === line.id
          ? { ...one, quantities: quantities ?? one.quantities, nameList: isPrinted ? list : one.nameList }
          : one,
      ),
    }),
  };
  return [ofOrder, ofJob];
}

// Helpers

const noRows: readonly NameRow[] = [];

function withNames(order: Order, place: Place, to: ChangeOfNames): Order {
  const isIt = ({ jobId, lineId }: Place) => jobId === place.jobId && lineId === place.lineId;
  const lines = order.lines.some(isIt) ? order.lines : [...order.lines, orderLineSchema.parse(place)];
  return { ...order, lines: lines.map((one) => (isIt(one) ? { ...one, names: [...to(one.names)] } : one)) };
}
