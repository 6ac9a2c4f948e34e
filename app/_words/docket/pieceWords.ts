import type { Blank } from '@/shared/schemas/blank';

/** What one of something is called, and several. */
interface PieceWord {
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
