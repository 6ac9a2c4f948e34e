import type { Artwork } from '@/shared/schemas/artwork';
import type { Plain, Variant } from './findingCase';

/** Pixels per inch at the printed size, and the largest size at which the picture is clean. */
interface Density {
  readonly artwork: string;
  readonly ppi: number;
  /** From so many ppi on it is clean. */
  readonly clean: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly cleanWidthMm: number;
  readonly cleanHeightMm: number;
}

interface Shape {
  readonly artwork: string;
  /** Share by which the two shapes differ. */
  readonly off: number;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Size of the picture fitted inside the box. */
  readonly insideWidthMm: number;
  readonly insideHeightMm: number;
}

interface Finest {
  readonly artwork: string;
  readonly placement: string;
  /** Height of letters, width of lines. */
  readonly mm: number;
  readonly leastMm: number;
  readonly reversed: 'yes' | 'no';
  /** Width of the picture at which they hold. */
  readonly neededWidthMm: number;
}

interface HeavyPixels extends OfArtwork {
  readonly share: number;
  /** Of that, what is heavy because so little of its grey is printed with black. */
  readonly flooded: number;
}

interface OfArtwork {
  readonly artwork: string;
}

/** Facts of the findings about the artwork. Shares are 0 to 1. */
export interface ArtworkFacts {
  'ART-01': Variant<'stop' | 'caution' | 'note', Density>;
  'ART-02': Variant<'stop' | 'caution' | 'note', Density>;
  'ART-03': Plain<OfArtwork & { readonly edgePx: number }>;
  'ART-04':
    | Variant<'stretch' | 'inside', Shape>
    /** What filling the box cuts off, of both edges together. */
    | Variant<'fill', Shape & { readonly cropMm: number }>;
  'ART-05': Variant<'letters' | 'lines', Finest>;
  /** Ink of the background, channels added. */
  'ART-06': Plain<OfArtwork & { readonly ink: number }>;
  'ART-07': Variant<'fading' | 'halo', OfArtwork & { readonly share: number }>;
  'ART-08': Variant<'untagged' | 'unreadable', OfArtwork>;
  'ART-09': Plain<OfArtwork>;
  'ART-10':
    | Variant<'heavyPixels', HeavyPixels>
    | Variant<'tooHeavyPixels', HeavyPixels & { readonly most: number }>
    | Variant<'heavy' | 'tooHeavy', OfArtwork & { readonly coverage: number; readonly most: number }>;
  'ART-11':
    | Variant<'twice', OfArtwork & { readonly placement: string }>
    | Variant<'not', { readonly placement: string }>;
  'ART-12':
    | Variant<'count', { readonly line: string; readonly names: number; readonly pieces: number }>
    /** `others` are the further names that stand twice. */
    | Variant<'twice', { readonly line: string; readonly name: string; readonly others: number }>;
  'ART-13':
    | Variant<'none', { readonly artworks: string }>
    | Variant<'other', { readonly artworks: string; readonly approved: number; readonly version: number }>;
  'ART-14': Variant<Exclude<Artwork['rights']['state'], 'own' | 'permission'>, OfArtwork>;
  'ART-15':
    | Variant<'unmeasured', { readonly placement: string; readonly wantedMm: number }>
    | Variant<
        'none' | 'short',
        { readonly placement: string; readonly mm: number; readonly wantedMm: number }
      >;
  'ART-16': Plain<{ readonly placement: string; readonly mm: number; readonly wantedMm: number }>;
  'ART-17': Plain<OfArtwork & { readonly fonts: string }>;
}
