import type { Picture } from '@/shared/schemas/picture';
import type { PictureReading } from './messages';

/** What a file is called and kept as. */
type FileFacts = Pick<Picture, 'fileId' | 'fileName' | 'bytes'>;

/** @returns what is kept of a picture that was read. */
export function pictureOfReading(
  { header, size, analysis, profile, colours, liveFonts }: PictureReading,
  file: FileFacts,
): Picture {
  const { ink, clear, background, white, edges } = analysis;
  const { content } = clear;
  const density = header.kind === 'raster' && header.density.kind === 'declared' ? header.density : null;
  return {
    ...file,
    format: header.format,
    width: size.width,
    height: size.height,
    density: density === null ? null : { xPpi: density.xPpi, yPpi: density.yPpi },
    bitsPerChannel: header.kind === 'raster' ? header.bitsPerChannel : 8,
    // Drawings name their colours in sRGB: SVG 1.1, section 3.2.
    colourTag: header.kind === 'raster' ? header.colourTag : 'sRGB',
    profile: colours,
    isAnimated: header.kind === 'raster' && header.isAnimated,
    liveFonts: [...liveFonts],
    coverage: { ...ink.coverage },
    heavyShare: ink.heavyShare,
    paleShare: ink.paleShare,
    softShare: clear.softShare,
    whiteShare: white.share,
    enclosedWhiteShare: white.enclosedShare,
    background:
      background.kind === 'none'
        ? null
        : { rgb: [...background.rgb], ink: background.ink, prints: background.prints },
    content:
      content.kind === 'nothing'
        ? null
        : { x: content.x, y: content.y, width: content.width, height: content.height },
    trimmed: false,
    edgeWidthPx: edges.kind === 'measured' ? edges.widthPx : null,
    inkAcross: [...profile.across],
    inkDown: [...profile.down],
    grey: {
      across: [...profile.grey.across],
      down: [...profile.grey.down],
      floodShares: [...ink.floodShares],
    },
    accepted: { box: false, white: false },
  };
}
