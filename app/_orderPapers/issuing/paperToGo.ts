import type { PaperToMake } from '@/app/_store/paperToMake';
import type { PaperFile } from '@/app/_transactions/issuePaper';
import { orderPaperSeries } from '@/lib/kinds/orderSeries';
import type { OrderPaperKind } from '@/lib/kinds/paperFacts';
import type { PaperBodies } from '@/lib/kinds/paperKinds';
import type { PaperSource } from '@/lib/papers/paperOf';
import type { PaperNumber } from '@/shared/schemas/happened';

/** A paper that could go out: all of it but its number. */
export type PaperToGo = {
  readonly [Kind in OrderPaperKind]: {
    readonly kind: Kind;
    readonly bodyOf: (number: PaperNumber) => PaperBodies[Kind];
  };
}[OrderPaperKind];

/** @returns what is set as a file: of a quote the customer's side alone. */
export function sourceOf(paper: PaperToGo, number: PaperNumber): PaperSource {
  switch (paper.kind) {
    case 'quote': {
      const { owner: _, ...body } = paper.bodyOf(number);
      return { kind: paper.kind, body };
    }
    case 'confirmation':
      return { kind: paper.kind, body: paper.bodyOf(number) };
    case 'paymentRequest':
      return { kind: paper.kind, body: paper.bodyOf(number) };
    case 'invoice':
      return { kind: paper.kind, body: paper.bodyOf(number) };
    case 'receipt':
      return { kind: paper.kind, body: paper.bodyOf(number) };
    case 'creditNote':
      return { kind: paper.kind, body: paper.bodyOf(number) };
    case 'proof':
      return { kind: paper.kind, body: paper.bodyOf(number) };
    case 'deliveryNote':
      return { kind: paper.kind, body: paper.bodyOf(number) };
    default:
      return paper satisfies never;
  }
}

/**
 * @param newest what could go out by what is known now; null where nothing can
 * @returns whether a paper may still go out: an invoice only while it bills what is to be billed
 */
export function isStillWanted(paper: PaperToGo, newest: PaperToGo | null): boolean {
  if (paper.kind !== 'invoice' || newest?.kind !== 'invoice') return newest !== null;
  const [asked, now] = [billed(paper), billed(newest)];
  return asked.isOfGoods === now.isOfGoods && asked.changeIds.join() === now.changeIds.join();
}

interface Going {
  readonly orderId: string;
  /** YYYY-MM-DD. */
  readonly day: string;
  readonly write: (source: PaperSource) => Promise<PaperFile>;
  /** Whether by what is known now it may go out still. */
  readonly mayGo: () => boolean;
}

/** Another tab was first, so that what this one would issue may not be wanted any more. */
export class AnotherWasFirst extends Error {
  override readonly name = 'AnotherWasFirst';
}

/** @returns the paper as the store issues it: made for the number it gets. */
export function paperToMake(
  paper: PaperToGo,
  { orderId, day, write, mayGo }: Going,
): PaperToMake<PaperBodies> {
  let tries = 0;
  const about = { kind: 'order', id: orderId } as const;
  const of = { about, series: seriesOf(paper.kind, orderId, day) };
  const made = <Body>(bodyOf: (number: PaperNumber) => Body) => ({
    body: bodyOf,
    async file(number: PaperNumber) {
      tries += 1;
      // A second invoice asks for the money twice; whether the other tab's was of this order is not known here yet.
      if (!mayGo() || (paper.kind === 'invoice' && tries > 1)) throw new AnotherWasFirst();
      return write(sourceOf(paper, number));
    },
  });
  switch (paper.kind) {
    case 'quote':
      return {
        ...{ ...of, kind: paper.kind, ...made(paper.bodyOf) },
        notes: (paperId) => [
          { kind: 'orderEvent', body: { orderId, day, step: { what: 'quoted', paperId } } },
        ],
      };
    case 'confirmation':
      return { ...of, kind: paper.kind, ...made(paper.bodyOf) };
    case 'paymentRequest':
      return { ...of, kind: paper.kind, ...made(paper.bodyOf) };
    case 'invoice':
      return { ...of, kind: paper.kind, ...made(paper.bodyOf) };
    case 'receipt':
      return { ...of, kind: paper.kind, ...made(paper.bodyOf) };
    case 'creditNote':
      return { ...of, kind: paper.kind, ...made(paper.bodyOf) };
    case 'proof':
      return { ...of, kind: paper.kind, ...made(paper.bodyOf) };
    case 'deliveryNote':
      return { ...of, kind: paper.kind, ...made(paper.bodyOf) };
    default:
      return paper satisfies never;
  }
}

interface NumberFacts {
  readonly kind: OrderPaperKind;
  readonly orderId: string;
  readonly day: string;
  /** Of its kind, withdrawn ones among them. */
  readonly papers: readonly { readonly series: string; readonly number: PaperNumber }[];
  /** Of this device; null while it has numbered nothing. */
  readonly letter: string | null;
}

/** @returns the number a paper will likely get; another tab may be given it before. */
export function likelyPaperNumber({ kind, orderId, day, papers, letter }: NumberFacts): PaperNumber {
  const series = seriesOf(kind, orderId, day);
  const counts = papers
    .filter((one) => one.series === series && one.number.letter === letter)
    .map(({ number }) => number.count);
  return { count: Math.max(0, ...counts) + 1, letter: letter ?? 'A' };
}

function billed({ bodyOf }: Extract<PaperToGo, { readonly kind: 'invoice' }>) {
  const { goods, changeIds } = bodyOf({ count: 1, letter: null });
  return { isOfGoods: goods.length > 0, changeIds };
}

const seriesOf = (kind: OrderPaperKind, orderId: string, day: string): string =>
  orderPaperSeries(kind, orderId, Number(day.slice(0, 4)));
