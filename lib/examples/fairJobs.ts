import type { Artwork } from '@/shared/schemas/artwork';
import type { Job, Line } from '@/shared/schemas/job';
import type { JobInput } from '@/shared/schemas/request';
import { exampleBlanks } from './exampleBlanks';
import { mugPlacement, shirtPlacement } from './examplePlacements';
import { ratesOf } from './exampleRates';
import { exampleWorkshop } from './exampleWorkshop';

interface Design {
  readonly id: string;
  readonly name: string;
  readonly inches: readonly [number, number];
  readonly coverage: number;
  /** S, M, L, XL, 2XL, 3XL. */
  readonly shirts: readonly number[];
}

const designs: readonly Design[] = [
  { id: 'fern', name: 'Fern', inches: [8, 9.5], coverage: 1.05, shirts: [4, 8, 9, 6, 2, 1] },
  { id: 'lighthouse', name: 'Lighthouse', inches: [8, 10], coverage: 1.45, shirts: [3, 7, 8, 5, 2, 1] },
  { id: 'otter', name: 'Otter', inches: [7.5, 8], coverage: 0.9, shirts: [3, 6, 7, 5, 2, 1] },
  { id: 'star-map', name: 'Star Map', inches: [8, 8], coverage: 2.1, shirts: [2, 4, 5, 3, 1, 1] },
];

const mugDesigns = ['fern', 'otter', 'star-map'];
const sizes = ['S', 'M', 'L', 'XL', '2XL', '3XL'];

/** Ninety-six shirts in four designs for a spring fair, made to stock; all invented. */
export function fairShirts(day: string): JobInput {
  const rate = ratesOf(day);
  return {
    asOf: day,
    workshop: exampleWorkshop(day),
    blanks: exampleBlanks(day),
    artworks: Object.fromEntries(
      designs.map((design) => [design.id, art(day, design.name, design.inches, design.coverage, 10)]),
    ),
    job: {
      ...stock,
      name: 'Spring Fair shirts',
      piecesPerSession: 48,
      rates: { setUpMinutes: rate(20, 'min') },
      lines: designs.map(
        (design): Line => ({
          id: design.id,
          name: `${design.name} shirt`,
          blankId: 'white-shirt',
          packagingId: 'stall-bag',
          quantities: sizes.map((size, index) => ({ size, quantity: design.shirts[index] ?? 0 })),
          orderedQuantity: null,
          nameList: '',
          audience: null,
          placements: [
            shirtPlacement(day, {
              id: `${design.id}-front`,
              name: 'Front print',
              position: 'front',
              artworkId: design.id,
              inches: design.inches,
              scrapShare: 0.03,
              minutes: 2.3,
            }),
          ],
          askedPrice: 28,
          askedStart: null,
          upCharges: [
            { size: '2XL', amount: 3 },
            { size: '3XL', amount: 3 },
          ],
          upCharging: 'separate',
          ownPrices: [],
          selling: null,
          breaks: null,
          marketCeiling: null,
        }),
      ),
    },
    onHand: {},
    approvedVersions: Object.fromEntries(designs.map(({ id }) => [id, 1])),
  };
}

/** Thirty-six mugs in three designs for the same fair. */
export function fairMugs(day: string): JobInput {
  const rate = ratesOf(day);
  const chosen = designs.filter((design) => mugDesigns.includes(design.id));
  return {
    asOf: day,
    workshop: exampleWorkshop(day),
    blanks: exampleBlanks(day),
    artworks: Object.fromEntries(
      chosen.map((design) => [`${design.id}-strip`, art(day, `${design.name} strip`, [8, 3.4], 1.3, 6)]),
    ),
    job: {
      ...stock,
      name: 'Spring Fair mugs',
      rates: { setUpMinutes: rate(15, 'min') },
      lines: chosen.map(
        (design): Line => ({
          id: design.id,
          name: `${design.name} mug`,
          blankId: 'white-mug',
          packagingId: 'mug-box',
          quantities: [{ size: '11 oz', quantity: 12 }],
          orderedQuantity: null,
          nameList: '',
          audience: null,
          placements: [mugPlacement(day, `${design.id}-strip`)],
          askedPrice: 16,
          askedStart: null,
          upCharges: [],
          upCharging: 'separate',
          ownPrices: [],
          selling: null,
          breaks: null,
          marketCeiling: null,
        }),
      ),
    },
    onHand: {},
    approvedVersions: Object.fromEntries(chosen.map(({ id }) => [`${id}-strip`, 1])),
  };
}

const stock = {
  customer: '',
  state: 'draft',
  archivedOn: null,
  madeFor: 'stock',
  printerId: 'desk-printer',
  sheetId: 'letter',
  channelId: 'stall',
  gang: 'apart',
  wantedOn: null,
  piecesPerSession: null,
  freightIn: null,
  deliveryKm: null,
  cardPayments: 0,
  sewnLabel: 'kept',
  ownRows: [],
  waivers: [],
} as const satisfies Partial<Job>;

function art(
  day: string,
  name: string,
  [width, height]: readonly [number, number],
  total: number,
  prepMinutes: number,
): Artwork {
  return {
    name,
    pixels: { width: 3000, height: Math.round((3000 * height) / width) },
    coverage: { kind: 'total', total },
    picture: null,
    finest: null,
    colourMatch: 'free',
    mirrored: false,
    rights: { state: 'own', note: '' },
    version: 1,
    prepMinutes: ratesOf(day)(prepMinutes, 'min'),
  };
}
