import type { Customer } from '@/shared/schemas/customer';
import type { Order } from '@/shared/schemas/order';

/** Ids of the customer and the order that a first visit finds. */
export const CLUB_CUSTOMER_ID = 'ramblers-club';
export const CLUB_ENQUIRY_ID = 'club-enquiry';

/** Whoever asks for the worked example; invented. */
export const clubCustomer: Customer = {
  name: 'Exampleton Ramblers Club',
  people: [
    {
      id: 'alex',
      name: 'Alex Placeholder',
      part: 'Committee',
      email: 'alex@placeholder.example',
      phone: '555 0101',
    },
  ],
  addresses: [{ id: 'hut', purpose: 'both', text: 'Club hut, 3 Sample Lane\nExampleton' }],
  language: null,
  taxNumber: '',
  exemption: null,
  note: '',
  erasedOn: null,
};

/**
 * What the club asks for, with the worked job in it.
 *
 * @param jobId of the worked job
 * @param wantedOn the day of the event
 */
export const clubEnquiry = (jobId: string, wantedOn: string): Order => ({
  name: 'Ramblers Club shirts',
  customerId: CLUB_CUSTOMER_ID,
  personId: null,
  heardFrom: 'Saw a shirt on a walk',
  asked: '37 shirts with our path on the back and the crest on the chest, for the day of the event.',
  askedPieces: 37,
  wantedOn,
  openItems: [
    {
      id: 'letter',
      what: 'Letter that the crest may be printed',
      ofWhom: 'customer',
      doneBy: null,
      doneOn: null,
    },
  ],
  jobIds: [jobId],
  lines: [],
  channelId: null,
  charges: [],
  discount: null,
  exempt: false,
  depositShare: null,
  validDays: null,
  revisionsIncluded: null,
  leadDays: null,
  language: null,
  delivery: { way: 'brought', addressId: null, byPerson: false },
  agreed: '',
  alternatives: [
    { id: 'three-more', kind: 'pieces', jobId, lineId: 'shirts', quantity: 40, size: 'L' },
    { id: 'back-only', kind: 'without', jobId, lineId: 'shirts', placementId: 'badge', each: null },
  ],
  underCostWhy: '',
  repeats: null,
  attachments: [],
  note: '',
  archivedOn: null,
});
