import { edgeRules } from '@/lib/check/placement/edgeRules';
import { nameListRules } from '@/lib/check/placement/nameList';
import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import { approvedVersionOf } from '@/lib/job/approvedVersionOf';
import { type PlacementPlace, placementPlaces } from '@/lib/job/places';
import { thresholds } from '@/shared/tables/thresholds';
import { eachArtwork } from './eachArtwork';
import { finestParts } from './finestParts';
import { pictureRules } from './pictureRules';
import { shapeRule } from './shape';

/** ART-10: so much ink that paper cockles and colours ghost. Totals typed from a print report reach 400 %. */
const heavyInk: Rule = ({ resolved }) =>
  eachArtwork(resolved).flatMap(({ placed, whereArtwork }) => {
    const { value, origin } = placed.totalCoverage;
    const { heavy, tooHeavy } = thresholds.ink;
    if (origin !== 'yours' || value <= heavy.value + 1e-9) return [];
    const isTooHeavy = value > tooHeavy.value + 1e-9;
    const limit = isTooHeavy ? tooHeavy : heavy;
    return [
      makeFinding({
        id: 'ART-10',
        severity: isTooHeavy ? 'stop' : 'caution',
        variant: isTooHeavy ? 'tooHeavy' : 'heavy',
        where: whereArtwork('coverage'),
        found: { value, unit: 'share' },
        limit: { value: limit.value, unit: 'share' },
        facts: { artwork: placed.artwork.name, coverage: value, most: limit.value },
      }),
    ];
  });

/** ART-11: the transfer must be backwards exactly once, by the printer or in the picture. */
const mirrored: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place) => {
    const { placement, artwork } = place.placed;
    if (placement.mirror !== artwork.mirrored) return [];
    const { name } = placement;
    return [
      makeFinding({
        id: 'ART-11',
        severity: 'stop',
        ...(placement.mirror
          ? ({ variant: 'twice', facts: { placement: name, artwork: artwork.name } } as const)
          : ({ variant: 'not', facts: { placement: name } } as const)),
        where: place.where('mirror'),
        found: placement.mirror ? 'mirrored twice' : 'not mirrored',
        fix: {
          label: placement.mirror ? 'mirrorOff' : 'mirrorOn',
          facts: {},
          changes: [place.change(['mirror'], !placement.mirror)],
        },
      }),
    ];
  });

/**
 * ART-13: what will be printed is not what the customer approved. While estimating this is a note. One proof
 * goes out for the whole order, so one finding names every artwork; stock has no customer to approve it.
 */
const approval: Rule = ({ resolved }) => {
  if (resolved.job.madeFor === 'stock') return [];
  const approvedOf = ({ placed }: PlacementPlace) => approvedVersionOf(resolved, placed.placement.artworkId);
  const open = eachArtwork(resolved).filter((place) => approvedOf(place) !== place.placed.artwork.version);
  const [first] = open;
  if (first === undefined) return [];
  const { artwork } = first.placed;
  const approved = approvedOf(first);
  const artworks = open.map(({ placed }) => placed.artwork.name).join(', ');
  return [
    makeFinding({
      id: 'ART-13',
      severity: 'note',
      ...(approved === null
        ? ({ variant: 'none', facts: { artworks } } as const)
        : ({ variant: 'other', facts: { artworks, version: artwork.version, approved } } as const)),
      where: first.whereArtwork('version'),
      found: approved === null ? null : String(approved),
      limit: String(artwork.version),
      fix: {
        label: 'markApproved',
        facts: { count: open.length },
        changes: open.map(({ placed }) => ({
          document: 'approval',
          id: placed.placement.artworkId,
          path: [],
          value: placed.artwork.version,
        })),
      },
    }),
  ];
};

/** ART-14: who owns the picture. */
const rights: Rule = ({ resolved }) =>
  eachArtwork(resolved).flatMap(({ placed: { artwork }, whereArtwork }) => {
    const { state } = artwork.rights;
    if (state === 'own' || state === 'permission') return [];
    return [
      makeFinding({
        id: 'ART-14',
        severity: state === 'none' ? 'stop' : 'caution',
        variant: state,
        where: whereArtwork('rights'),
        found: state,
        facts: { artwork: artwork.name },
      }),
    ];
  });

/** ART-09: a colour that has to match. Dye shifts with ink, heat and coating: only a pressed swatch tells. */
const colourMatch: Rule = ({ resolved }) =>
  eachArtwork(resolved).flatMap(({ placed: { artwork }, whereArtwork }) =>
    artwork.colourMatch === 'wanted'
      ? [
          makeFinding({
            id: 'ART-09',
            severity: 'caution',
            where: whereArtwork('colourMatch'),
            found: artwork.colourMatch,
            facts: { artwork: artwork.name },
          }),
        ]
      : [],
  );

export const artworkRules: readonly Rule[] = [
  shapeRule,
  finestParts,
  ...pictureRules,
  heavyInk,
  colourMatch,
  mirrored,
  ...nameListRules,
  approval,
  rights,
  ...edgeRules,
];
