import type { Blank } from '@/shared/schemas/blank';
import type { JobInput } from '@/shared/schemas/request';

/** What one of something is called, and several. */
export interface PieceWord {
  readonly one: string;
  readonly many: string;
}

const word = (one: string, many = `${one}s`): PieceWord => ({ one, many });

/** What a maker calls a finished piece on a blank; a piece, where the blank is not known. */
export function pieceWords(blank: Pick<Blank, 'kind' | 'substrate'> | undefined): PieceWord {
  const kind = blank?.kind;
  switch (kind) {
    case 'garment':
      return word('shirt');
    case 'bag':
      return word('bag');
    case 'cushion':
      return word('cushion');
    case 'drinkware':
      return word(blank?.substrate.startsWith('steelTumbler') ? 'tumbler' : 'mug');
    case 'panel':
      return word('panel');
    case 'mat':
      return word('mat');
    case 'tile':
      return word('tile');
    case 'small':
    case undefined:
      return word('piece');
    default:
      return kind satisfies never;
  }
}

/** What the finished pieces of a whole job are called; pieces, where its lines make different things. */
export function piecesOfJob({ job, blanks }: Pick<JobInput, 'job' | 'blanks'>): PieceWord {
  const [first, ...others] = job.lines.map(({ blankId }) => pieceWords(blanks[blankId]));
  return first !== undefined && others.every(({ one }) => one === first.one) ? first : pieceWords(undefined);
}
