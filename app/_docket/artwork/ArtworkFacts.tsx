'use client';

import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import type { Picture } from '@/shared/schemas/picture';
import styles from './ArtworkFacts.module.css';

const formats = { png: 'PNG', jpeg: 'JPEG', webp: 'WebP', gif: 'GIF', svg: 'SVG' } as const;
const profiles = {
  sRGB: 'sRGB',
  displayP3: 'Display P3',
  adobeRgbLike: 'Adobe RGB or alike',
  unknown: 'with a profile of its own',
  unreadable: 'its profile cannot be read; taken as sRGB',
} as const;

/** What a file says of itself. */
export function ArtworkFacts({ picture }: Readonly<{ picture: Picture }>) {
  const formatter = formatterFor(useTextContext());
  const { density } = picture;
  const facts: readonly (readonly [string, string])[] = [
    [
      'File',
      `${picture.fileName}, ${formats[picture.format]}, ${kilobytes(picture.bytes, formatter.number)}`,
    ],
    [
      picture.format === 'svg' ? 'Drawn at' : 'Pixels',
      `${formatter.number(picture.width, 0)} × ${formatter.number(picture.height, 0)}, ${picture.bitsPerChannel} ${picture.bitsPerChannel === 1 ? 'bit' : 'bits'} a channel`,
    ],
    [
      'The file asks for',
      density === null
        ? 'no density of its own'
        : `${formatter.number(Math.min(density.xPpi, density.yPpi), 1)} ppi`,
    ],
    ['Colours', coloursOf(picture)],
    // Damage that comes out even in its packed pixels cannot be found by reading them.
    ...(picture.format === 'jpeg'
      ? ([['Damage', 'a JPEG has no check sum: look at the preview for grey or broken parts']] as const)
      : []),
    ...(picture.isAnimated ? ([['Animated', 'its first frame is used']] as const) : []),
  ];
  return (
    <dl className={styles.facts}>
      {facts.map(([name, text]) => (
        <div key={name} className={styles.fact}>
          <dt>{name}</dt>
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  );
}

// Helpers

function coloursOf({ format, profile }: Picture): string {
  if (profile !== null) return profiles[profile];
  // Drawings name their colours in sRGB.
  return format === 'svg' ? 'sRGB' : 'not named; taken as sRGB';
}

const kilobytes = (bytes: number, number: (value: number, maxDecimals?: number) => string): string =>
  bytes >= 1e6 ? `${number(bytes / 1e6, 1)} MB` : `${number(Math.max(1, bytes / 1e3), 0)} kB`;
