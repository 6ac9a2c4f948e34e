import type { Paper, Row } from '@/lib/papers/paper';
import type { Labels } from '@/lib/papers/words/englishLabels';
import { apart, filled } from '@/lib/papers/words/labelsFor';
import type { NameRow } from '@/shared/schemas/order';
import { type Heading, headOf } from './heading';

/** A form in which a club says who gets which size; it has no number and is never issued. */
export interface SizeFormBody extends Pick<Heading, 'language' | 'page' | 'seller'> {
  /** What the sizes are of. */
  readonly title: string;
  readonly sizes: readonly string[];
  readonly hasNumbers: boolean;
  /** What is known already; empty ones are to be filled. */
  readonly rows: readonly Pick<NameRow, 'name' | 'size' | 'number'>[];
}

/** As many letters of sizes fit into a row, to be ringed there; more are told once, above. */
const MOST_TO_RING = 34;

export function sizeFormPaper(body: SizeFormBody, labels: Labels): Paper {
  const { language, page, seller, title, sizes, hasNumbers, rows } = body;
  const { how, inRow } = wayToTell(sizes, labels);
  return {
    page,
    language,
    title: `${labels.sizeForm}: ${title}`,
    foot: labels.page,
    blocks: [
      headOf(seller, labels),
      { kind: 'title', title: labels.sizeForm, subject: title, party: null, facts: [] },
      { kind: 'text', text: how, isStrong: false },
      {
        kind: 'table',
        columns: [labels.person, labels.size, ...(hasNumbers ? [labels.personNumber] : [])].map((head) => ({
          head,
          isFigure: false,
        })),
        rows: rows.map(({ name, size, number }): Row => {
          const told = size.trim();
          // As the names are counted: by the very word.
          const isUnknown = told !== '' && sizes.length > 0 && !sizes.includes(told);
          return {
            kind: 'row',
            cells: [name, told === '' || isUnknown ? inRow : told, ...(hasNumbers ? [number] : [])],
            ...(isUnknown ? { note: filled(labels.sizeUnknown, { size: apart(told) }) } : {}),
          };
        }),
        sums: [],
        note: '',
        shares: hasNumbers ? [0.48, 0.36, 0.16] : [0.58, 0.42],
      },
    ],
  };
}

// Helpers

/** @returns how a size is told, and what stands for it in a row that has none yet. */
function wayToTell(
  sizes: readonly string[],
  labels: Labels,
): { readonly how: string; readonly inRow: string } {
  const [only = '', ...others] = sizes;
  if (others.length === 0) return { how: labels.sizeFormPlain, inRow: only };
  const inRow = sizes.join(' · ');
  return inRow.length <= MOST_TO_RING
    ? { how: labels.sizeFormRing, inRow }
    : { how: filled(labels.sizeFormWrite, { sizes: sizes.map(apart).join(', ') }), inRow: '' };
}
