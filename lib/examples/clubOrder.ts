import type { Artwork } from '@/shared/schemas/artwork';
import type { JobInput } from '@/shared/schemas/request';
import { kmFromMiles, mmFromInches } from '@/shared/units';
import { exampleBlanks } from './exampleBlanks';
import { shirtPlacement } from './examplePlacements';
import { ratesOf } from './exampleRates';
import { exampleWorkshop } from './exampleWorkshop';

/**
 * The worked example: thirty-seven club shirts with a back picture and a chest badge, all invented.
 *
 * @param day the day it is looked at; its rates are of that day
 * @param wantedOn the day of the event
 */
export function clubOrder(day: string, wantedOn: string): JobInput {
  const rate = ratesOf(day);
  return {
    asOf: day,
    workshop: exampleWorkshop(day),
    blanks: exampleBlanks(day),
    artworks: clubArtworks(day),
    job: {
      name: 'Ramblers Club shirts',
      customer: 'Exampleton Ramblers Club, Alex Placeholder',
      state: 'draft',
      archivedOn: null,
      madeFor: 'order',
      printerId: 'desk-printer',
      sheetId: 'letter',
      channelId: 'own-orders',
      gang: 'apart',
      lines: [
        {
          id: 'shirts',
          name: 'Club shirt',
          blankId: 'white-shirt',
          packagingId: 'club-bag',
          quantities: [
            { size: 'S', quantity: 4 },
            { size: 'M', quantity: 9 },
            { size: 'L', quantity: 11 },
            { size: 'XL', quantity: 8 },
            { size: '2XL', quantity: 4 },
            { size: '3XL', quantity: 1 },
          ],
          orderedQuantity: null,
          nameList: '',
          audience: 'adults',
          placements: [
            shirtPlacement(day, {
              id: 'back',
              name: 'Back picture',
              position: 'back',
              artworkId: 'hill-path',
              inches: [8, 10],
              scrapShare: 0.035,
              minutes: 2.4,
              dropFromCollarMm: mmFromInches(3.5),
              testPresses: 2,
            }),
            shirtPlacement(day, {
              id: 'badge',
              name: 'Chest badge',
              position: 'leftChest',
              artworkId: 'club-crest',
              inches: [3.5, 3.5],
              scrapShare: 0.02,
              minutes: 2.1,
              raisedParts: 'underPlaten',
            }),
          ],
          askedPrice: 19,
          askedStart: null,
          upCharges: [
            { size: '2XL', amount: 1.5 },
            { size: '3XL', amount: 2.5 },
          ],
          upCharging: 'separate',
          ownPrices: [],
          selling: null,
          breaks: null,
          marketCeiling: 22,
        },
      ],
      wantedOn,
      piecesPerSession: null,
      freightIn: rate(9.5, 'money/order'),
      deliveryKm: kmFromMiles(12),
      cardPayments: 1,
      sewnLabel: 'kept',
      rates: {},
      ownRows: [],
      waivers: [],
    },
    onHand: {},
    approvedVersions: { 'club-crest': 1 },
  };
}

function clubArtworks(day: string): { readonly 'club-crest': Artwork; readonly 'hill-path': Artwork } {
  const rate = ratesOf(day);
  return {
    'club-crest': {
      name: 'Club crest',
      pixels: { width: 1200, height: 1200 },
      coverage: { kind: 'total', total: 1.4 },
      picture: null,
      finest: null,
      colourMatch: 'free',
      mirrored: false,
      rights: { state: 'promised', note: 'The committee has promised a letter.' },
      version: 1,
      prepMinutes: rate(15, 'min'),
    },
    'hill-path': {
      name: 'Hill path picture',
      pixels: { width: 1500, height: 1800 },
      coverage: { kind: 'total', total: 1.1 },
      picture: null,
      finest: null,
      colourMatch: 'free',
      mirrored: false,
      rights: { state: 'permission', note: 'Drawn by a member, who agreed in writing.' },
      version: 1,
      prepMinutes: rate(30, 'min'),
    },
  };
}
