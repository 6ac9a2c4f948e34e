import type { Artwork } from '@/shared/schemas/artwork';
import type { Blank } from '@/shared/schemas/blank';
import type { Job } from '@/shared/schemas/job';
import type { Press, Workshop } from '@/shared/schemas/workshop';
import { otherTypicals, placementTypicals } from '@/shared/tables/typicalRates';
import { startingPrint } from './startingPrint';
import { startingRecipe } from './startingRecipe';
import { typicalsOf } from './typicalsOf';

/** Stands where the workshop has nothing to choose; the check tells that it leads nowhere. */
const NONE = 'none';

interface NewJob {
  readonly name: string;
  /** YYYY-MM-DD, the day its typical figures are set. */
  readonly day: string;
  readonly workshop: Workshop;
  /** What it is printed on; null where there is no blank yet. */
  readonly blank: { readonly id: string; readonly body: Blank } | null;
  readonly artworkId: string;
}

/**
 * A job to begin with: the workshop's first machines, one line, one print, no quantities yet.
 *
 * @returns the job and the picture it prints, whose figures are typical
 */
export function newJob({ name, day, workshop, blank, artworkId }: NewJob): {
  readonly job: Job;
  readonly artwork: Artwork;
} {
  const typical = typicalsOf(day, workshop.currency);
  const press = pressFor(blank?.body ?? null, workshop);
  const [printer = null] = workshop.printers;
  const [sheet = null] = workshop.sheets;
  const [channel] = workshop.channels;
  const { position, widthMm, heightMm } = startingPrint(blank?.body ?? null, {
    sheet,
    printer,
    press,
    policy: workshop.policy,
    unit: workshop.units.length,
  });
  const times = placementTypicals[press?.kind ?? 'flat'];
  const isOrder = channel?.kind !== 'stall';
  return {
    artwork: {
      name: 'First picture',
      pixels: null,
      coverage: null,
      picture: null,
      finest: null,
      colourMatch: 'free',
      mirrored: false,
      rights: { state: 'notStated', note: '' },
      version: 1,
      approvedVersion: null,
      prepMinutes: typical(otherTypicals.prepMinutes.typical, 'min'),
    },
    job: {
      name,
      customer: '',
      madeFor: isOrder ? 'order' : 'stock',
      printerId: printer?.id ?? NONE,
      sheetId: sheet?.id ?? NONE,
      channelId: channel?.id ?? NONE,
      gang: 'apart',
      lines: [
        {
          id: 'line-1',
          name: blank?.body.name ?? 'First line',
          blankId: blank?.id ?? NONE,
          packagingId: workshop.packagings[0]?.id ?? null,
          quantities: [],
          orderedQuantity: null,
          nameList: '',
          audience: null,
          placements: [
            {
              id: 'print-1',
              name: 'First print',
              position,
              artworkId,
              prints: [{ sizes: null, widthMm, heightMm }],
              fit: 'inside',
              dropFromCollarMm: null,
              mirror: true,
              pressId: press?.id ?? NONE,
              recipe: startingRecipe(
                blank?.body ?? { substrate: 'polyesterShirt', kind: 'garment' },
                workshop.units.temperature,
              ),
              raisedParts: 'none',
              scrap: typical(times.scrap.typical, 'share'),
              handMinutes: typical(times.handMinutes.typical, 'min'),
              aloneMinutes: typical(times.aloneMinutes.typical, 'min'),
              hotMinutes: typical(times.hotMinutes.typical, 'min'),
              testPresses: 0,
              bleedMm: null,
              safeZoneMm: null,
              rim: { belowMm: null, inside: false },
              replacements: 'alone',
            },
          ],
          askedPrice: null,
          upCharges: [],
          upCharging: 'separate',
          ownPrices: [],
          selling: null,
          breaks: null,
          marketCeiling: null,
        },
      ],
      wantedOn: null,
      piecesPerSession: null,
      freightIn: null,
      deliveryKm: null,
      cardPayments: isOrder && channel?.cardShare?.value !== 0 ? 1 : 0,
      sewnLabel: 'unknown',
      rates: {},
      ownRows: [],
      waivers: [],
    },
  };
}

/** The first press that takes the blank; else the first there is. */
function pressFor(blank: Blank | null, { presses }: Workshop): Press | null {
  const wanted = wantedKind(blank);
  return presses.find(({ kind }) => kind === wanted) ?? presses[0] ?? null;
}

function wantedKind(blank: Blank | null): Press['kind'] {
  if (blank?.kind !== 'drinkware') return 'flat';
  if (blank.substrate === 'steelTumblerOven') return 'oven';
  return blank.substrate === 'steelTumblerPress' ? 'tumbler' : 'mug';
}
