import type { Rule, Scene } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import { floodShareOf, heavyShareOf } from '@/lib/ink/heavyShareOf';
import type { PlacementPlace } from '@/lib/job/places';
import type { Change, Finding } from '@/shared/finding';
import type { Picture } from '@/shared/schemas/picture';
import { thresholds } from '@/shared/tables/thresholds';
import { eachArtwork } from './eachArtwork';

/** Shares are sums over pixels: equal ones may differ in the last digit. */
const NOISE = 1e-9;

/** ART-03: enough pixels, but no detail in them. */
const enlarged: Rule = (scene) =>
  eachPicture(scene, ({ picture, artwork, where }) => {
    const limit = thresholds.picture.softEdge;
    const width = picture.edgeWidthPx;
    if (width === null || width < limit.value - NOISE) return [];
    return [
      makeFinding({
        id: 'ART-03',
        severity: 'caution',
        where,
        found: { value: width, unit: 'px' },
        limit: { value: limit.value, unit: 'px' },
        facts: { artwork, edgePx: width },
      }),
    ];
  });

/** ART-06: a solid rectangle around the picture prints as a coloured box. */
const opaqueBox: Rule = (scene) =>
  eachPicture(scene, ({ picture, artwork, where, change }) => {
    const { background, accepted } = picture;
    if (background === null || !background.prints || accepted.box) return [];
    return [
      makeFinding({
        id: 'ART-06',
        severity: 'caution',
        where,
        found: { value: background.ink, unit: 'share' },
        facts: { artwork, ink: background.ink },
        fix: { label: 'boxIsMeant', facts: {}, changes: [change(['accepted', 'box'])] },
      }),
    ];
  });

/** ART-07: what fades out, and the pale specks of a packed JPEG, print as a tint that is seen on cloth. */
const paleHalo: Rule = (scene) =>
  eachPicture(scene, ({ picture, artwork, where }) => {
    const { fading, halo } = thresholds.picture;
    const fades = picture.softShare > fading.value + NOISE;
    const isHalo = picture.format === 'jpeg' && picture.paleShare > halo.value + NOISE;
    if (!fades && !isHalo) return [];
    const [share, limit] = fades ? [picture.softShare, fading] : [picture.paleShare, halo];
    return [
      makeFinding({
        id: 'ART-07',
        severity: 'note',
        variant: fades ? 'fading' : 'halo',
        where,
        found: { value: share, unit: 'share' },
        limit: { value: limit.value, unit: 'share' },
        facts: { artwork, share },
      }),
    ];
  });

/**
 * ART-08: nobody has said what the colour numbers mean, or in a profile that is passed over. Pictures in printing inks
 * are refused when read.
 */
const unnamedColours: Rule = (scene) =>
  eachPicture(scene, ({ picture, artwork, where }) => {
    const isUnreadable = picture.profile === 'unreadable';
    if (!isUnreadable && picture.colourTag !== 'untagged') return [];
    const variant = isUnreadable ? 'unreadable' : 'untagged';
    return [
      makeFinding({
        id: 'ART-08',
        severity: isUnreadable ? 'caution' : 'note',
        variant,
        where,
        found: variant,
        facts: { artwork },
      }),
    ];
  });

/**
 * ART-10 by the pixels: how much of the print is heavy. The maker's own figure stands above it. Colour is judged with all
 * grey in black, as the limit was set: else every black word on a printer with 50 % would be as heavy as it looks.
 */
const heavyPixels: Rule = (scene) =>
  eachPicture(scene, ({ picture, artwork, where, hasOwnFigure }) => {
    const { heavyPixels: heavy, tooHeavyPixels: tooHeavy } = thresholds.ink;
    const blackShare = scene.resolved.printer.blackShare.value;
    const share = heavyShareOf(picture, blackShare);
    const flooded = floodShareOf(picture, blackShare);
    if (hasOwnFigure || share <= heavy.value + NOISE) return [];
    const isTooHeavy = share > tooHeavy.value + NOISE;
    const limit = isTooHeavy ? tooHeavy : heavy;
    return [
      makeFinding({
        id: 'ART-10',
        severity: isTooHeavy ? 'stop' : 'caution',
        ...(isTooHeavy
          ? ({ variant: 'tooHeavyPixels', facts: { artwork, share, flooded, most: limit.value } } as const)
          : ({ variant: 'heavyPixels', facts: { artwork, share, flooded } } as const)),
        where,
        found: { value: share, unit: 'share' },
        limit: { value: limit.value, unit: 'share' },
      }),
    ];
  });

/** ART-17: live text in a font the device lacks is set in another one, of other widths. */
const missingFonts: Rule = (scene) =>
  eachPicture(scene, ({ picture, artwork, where }) => {
    const fonts = picture.liveFonts.join(', ');
    return fonts === ''
      ? []
      : [makeFinding({ id: 'ART-17', severity: 'caution', where, found: fonts, facts: { artwork, fonts } })];
  });

interface PlacedFile {
  readonly picture: Picture;
  readonly artwork: string;
  readonly hasOwnFigure: boolean;
  readonly where: Finding['where'];
  /** Writes the maker's yes into the picture. */
  readonly change: (path: readonly string[]) => Change;
}

function eachPicture(
  { resolved }: Scene,
  judge: (file: PlacedFile) => readonly Finding[],
): readonly Finding[] {
  return eachArtwork(resolved).flatMap((place: PlacementPlace) => {
    const { artwork, placement } = place.placed;
    if (artwork.picture === null) return [];
    return judge({
      picture: artwork.picture,
      artwork: artwork.name,
      hasOwnFigure: artwork.coverage !== null,
      where: place.whereArtwork('picture'),
      change: (path) => ({
        document: 'artwork',
        id: placement.artworkId,
        path: ['picture', ...path],
        value: true,
      }),
    });
  });
}

/** Rules that look at what was read from the maker's own file. */
export const pictureRules: readonly Rule[] = [
  enlarged,
  opaqueBox,
  paleHalo,
  unnamedColours,
  heavyPixels,
  missingFonts,
];
