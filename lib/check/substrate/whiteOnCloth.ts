import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import { placementPlaces } from '@/lib/job/places';
import type { Blank } from '@/shared/schemas/blank';
import { thresholds } from '@/shared/tables/thresholds';

/** SUB-05: white that printed parts enclose comes out as bare cloth. Each picture once on each blank. */
export const whiteOnCloth: Rule = ({ resolved }) => {
  const judged = new Set<string>();
  return placementPlaces(resolved).flatMap(({ line, placed, whereArtwork }) => {
    const { artwork, placement } = placed;
    const { picture } = artwork;
    const pair = `${placement.artworkId} ${line.line.blankId}`;
    if (picture === null || judged.has(pair)) return [];
    judged.add(pair);
    const limit = thresholds.picture.white;
    const share = picture.enclosedWhiteShare;
    if (picture.accepted.white || share <= limit.value + 1e-9 || isWhite(line.blank)) return [];
    return [
      makeFinding({
        id: 'SUB-05',
        severity: 'caution',
        where: whereArtwork('picture'),
        found: { value: share, unit: 'share' },
        limit: { value: limit.value, unit: 'share' },
        facts: { artwork: artwork.name, blank: line.blank.name, colour: line.blank.colour.name, share },
        fix: {
          label: 'whiteIsCloth',
          facts: {},
          changes: [
            {
              document: 'artwork',
              id: placement.artworkId,
              path: ['picture', 'accepted', 'white'],
              value: true,
            },
          ],
        },
      }),
    ];
  });
};

function isWhite({ colour: { L, a, b } }: Blank): boolean {
  const { whiteLightness, whiteChroma } = thresholds.colour;
  return L >= whiteLightness.value && Math.hypot(a, b) <= whiteChroma.value;
}
