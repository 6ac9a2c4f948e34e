import type { Block, Paper, Sum } from '@/lib/papers/paper';
import type { Labels } from '@/lib/papers/words/englishLabels';

/** Figures that are the maker's alone, in words that are made already: of a job, or of a price list. */
export interface OwnSheetBody {
  readonly page: 'a4' | 'letter';
  readonly language: string;
  readonly workshop: string;
  /** What it is: “For you alone”. */
  readonly kind: string;
  readonly name: string;
  readonly facts: readonly { readonly name: string; readonly value: string }[];
  readonly says: string;
  readonly tables: readonly OwnTable[];
  /** Beneath the tables. */
  readonly foot: string;
}

export interface OwnTable {
  readonly columns: readonly { readonly head: string; readonly isFigure: boolean }[];
  readonly rows: readonly (readonly string[])[];
  readonly total: { readonly name: string; readonly value: string } | null;
}

export function ownSheetPaper(body: OwnSheetBody, labels: Labels): Paper {
  const { page, language, kind, name, facts } = body;
  return {
    page,
    language,
    title: `${kind}: ${name}`,
    foot: labels.page,
    blocks: [
      { kind: 'head', name: body.workshop, tagline: '', lines: [kind], logo: null },
      { kind: 'title', title: name, subject: '', party: null, facts },
      ...textBlock(body.says),
      ...body.tables.map(
        ({ columns, rows, total }): Block => ({
          kind: 'table',
          columns,
          rows: rows.map((cells) => ({ kind: 'row', cells })),
          sums: total === null ? [] : [{ ...total, look: 'strong' } satisfies Sum],
          note: '',
        }),
      ),
      ...textBlock(body.foot),
    ],
  };
}

const textBlock = (text: string): readonly Block[] =>
  text === '' ? [] : [{ kind: 'text', text, isStrong: false }];
