import type { Block, Paper } from '@/lib/papers/paper';
import type { Labels } from '@/lib/papers/words/englishLabels';
import { type Figures, figuresOf } from '@/lib/papers/words/figures';
import { filled } from '@/lib/papers/words/labelsFor';
import { orderNumberText, seriesNumberText, versionText } from '@/shared/orderNumberText';
import type { Invoice } from '@/shared/schemas/orderPapers';
import type { Seller } from '@/shared/schemas/paperParts';

/** What every paper of an order bears. */
export type Heading = Pick<
  Invoice,
  | 'order'
  | 'number'
  | 'issuedOn'
  | 'title'
  | 'language'
  | 'locale'
  | 'length'
  | 'page'
  | 'currency'
  | 'seller'
  | 'customer'
>;

/** The words and figures that a body is told in. */
export interface Told {
  readonly labels: Labels;
  readonly figures: Figures;
}

type Fact = Extract<Block, { kind: 'title' }>['facts'][number];

interface Named {
  /** What the paper is called. */
  readonly title: string;
  /** How its own number is written. */
  readonly number: string;
  readonly facts?: readonly (Fact | null)[];
  readonly blocks: readonly (Block | null)[];
  readonly mayTighten?: boolean;
}

/** @returns a paper with its head, whom it is for and what it is called. */
export function headedPaper(body: Heading, { labels, figures }: Told, named: Named): Paper {
  const order = body.order === null ? null : orderNumberText(body.order);
  const facts: readonly (Fact | null)[] = [
    { name: labels.number, value: named.number },
    order === null || named.number.startsWith(order) ? null : { name: labels.order, value: order },
    { name: labels.date, value: figures.day(body.issuedOn) },
    ...(named.facts ?? []),
  ];
  const { customer } = body;
  return {
    page: body.page,
    language: body.language,
    title: `${named.title} ${named.number}`,
    foot: labels.page,
    mayTighten: named.mayTighten ?? false,
    blocks: [
      headOf(body.seller, labels),
      {
        kind: 'title',
        title: named.title,
        subject: body.title,
        party: {
          words: labels.for,
          name: customer.name,
          lines: [
            ...textLines(customer.person),
            ...textLines(customer.address),
            ...textLines(customer.contact),
            ...taxNumberOf(customer.taxNumber, labels),
          ],
        },
        facts: facts.filter((fact) => fact !== null),
      },
      ...named.blocks.filter((block) => block !== null),
    ],
  };
}

/** @returns who writes. */
export const headOf = (seller: Seller, labels: Labels): Block => ({
  kind: 'head',
  name: seller.name,
  tagline: seller.tagline,
  lines: [
    textLines(seller.address).join(', '),
    textLines(seller.contact).join(' · '),
    ...taxNumberOf(seller.taxNumber, labels),
  ].filter((line) => line !== ''),
  logo: seller.logo?.fileId ?? null,
});

/** @returns the number of a quote or a confirmation: that of its order, and which version it is. */
export function versionNumber(
  { order, number, issuedOn }: Pick<Heading, 'order' | 'number' | 'issuedOn'>,
  labels: Labels,
): string {
  if (order === null) return seriesNumberText(number, issuedOn);
  return filled(labels.version, { number: orderNumberText(order), version: versionText(number, order) });
}

export const ownNumber = ({ number, issuedOn }: Pick<Heading, 'number' | 'issuedOn'>): string =>
  seriesNumberText(number, issuedOn);

export const toldIn = (
  body: Pick<Heading, 'language' | 'locale' | 'length' | 'currency'>,
  labels: Labels,
): Told => ({ labels, figures: figuresOf(body) });

/** @returns a fact of a day that is known. */
export const dayFact = (name: string, day: string | null, { figures }: Told): Fact | null =>
  day === null ? null : { name, value: figures.day(day) };

/** @returns the lines of a typed text that say something. */
export const textLines = (text: string): readonly string[] =>
  text
    .split(/[\r\n\u0085\u2028\u2029]+/)
    .map((line) => line.trim())
    .filter((line) => line !== '');

/** @returns a typed text in one line. */
export const oneLine = (text: string): string => textLines(text).join(' ');

const taxNumberOf = (number: string, labels: Labels): readonly string[] =>
  oneLine(number) === '' ? [] : [filled(labels.taxNumber, { number: oneLine(number) })];

/** @returns the seller's word on how to pay; null where there is none. */
export const howToPay = ({ seller }: Pick<Heading, 'seller'>, labels: Labels) =>
  textLines(seller.howToPay).length === 0
    ? null
    : { lead: `${labels.howToPay}.`, text: textLines(seller.howToPay).join('\n') };
