import type { Artwork } from '@/shared/schemas/artwork';
import type { Blank } from '@/shared/schemas/blank';
import type { Job } from '@/shared/schemas/job';
import type { Workshop } from '@/shared/schemas/workshop';
import { otherTypicals } from '@/shared/tables/typicalRates';
import { type MeasuredScrap, NONE, startingPlacement } from './startingPlacement';
import { FIRST_PIECES, typicalMix } from './typicalMix';
import { typicalsOf } from './typicalsOf';

/** What a picture is called until there is one. */
const FIRST_PICTURE = 'First picture';

interface NewJob {
  readonly name: string;
  /** YYYY-MM-DD, the day its typical figures are set. */
  readonly day: string;
  readonly workshop: Workshop;
  /** What it is printed on; null where there is no blank yet. */
  readonly blank: { readonly id: string; readonly body: Blank } | null;
  readonly artworkId: string;
  /** Machines chosen already; the workshop's first ones where left out. */
  readonly machines?: { readonly printerId: string; readonly sheetId: string; readonly pressId: string };
  /** Scrap that runs of the blank measured; else it is typical. */
  readonly measuredScrap?: MeasuredScrap | undefined;
}

/**
 * A job to begin with: the workshop's first machines, one line of twelve pieces in a typical mix, one print.
 *
 * @returns the job and the picture it prints, whose figures are typical
 */
export function newJob({ name, day, workshop, blank, artworkId, machines, measuredScrap }: NewJob): {
  readonly job: Job;
  readonly artwork: Artwork;
} {
  const typical = typicalsOf(day, workshop.currency);
  const printer = chosen(workshop.printers, machines?.printerId);
  const sheet = chosen(workshop.sheets, machines?.sheetId);
  const [channel] = workshop.channels;
  const isOrder = channel?.kind !== 'stall';
  const sizes = blank?.body.sizes.map((size) => size.name) ?? [];
  return {
    artwork: {
      name: FIRST_PICTURE,
      pixels: null,
      coverage: null,
      picture: null,
      finest: null,
      colourMatch: 'free',
      mirrored: false,
      rights: { state: 'notStated', note: '' },
      version: 1,
      prepMinutes: typical(otherTypicals.prepMinutes.typical, 'min'),
    },
    job: {
      name,
      customer: '',
      state: 'draft',
      archivedOn: null,
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
          quantities: typicalMix(sizes, sizes.length === 0 ? 0 : FIRST_PIECES),
          orderedQuantity: null,
          nameList: '',
          audience: null,
          placements: [
            startingPlacement({
              id: 'print-1',
              artworkId,
              blank: blank?.body ?? null,
              workshop,
              sheet,
              printer,
              day,
              pressId: machines?.pressId,
              measuredScrap,
            }),
          ],
          askedPrice: null,
          askedStart: null,
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

const chosen = <Part extends { readonly id: string }>(
  parts: readonly Part[],
  id: string | undefined,
): Part | null => parts.find((part) => part.id === id) ?? parts[0] ?? null;
