/**
 * Where people type freely in each kind of draft and entry: keys from the body inward, lists passed through. Nothing else
 * is ever rewritten: a name of a size, a choice, a code or an id may read like the name of a person.
 */
export const typedTexts: Readonly<Record<string, readonly string[]>> = {
  workshop: [
    ...['name', 'printers.name', 'presses.name', 'sheets.name', 'packagings.name', 'channels.name'],
    ...['daysOff.what', 'seller.name', 'seller.tagline', 'seller.address', 'seller.contact'],
    ...['seller.taxNumber', 'seller.howToPay', 'seller.logo.fileName', 'papers.words.text'],
    ...['papers.terms.text', 'papers.ownTerms.heading', 'papers.ownTerms.text', 'ownRows.label'],
  ],
  blank: ['name', 'colour.name'],
  artwork: ['name', 'picture.fileName', 'rights.note'],
  job: [
    ...['name', 'customer', 'lines.name', 'lines.nameList', 'lines.placements.name'],
    ...['ownRows.label', 'waivers.reason'],
  ],
  priceList: ['name', 'from', 'notes', 'leadTime'],
  customer: [
    ...['name', 'people.name', 'people.part', 'people.email', 'people.phone', 'addresses.text'],
    ...['taxNumber', 'exemption.number', 'exemption.proof.fileName', 'note'],
  ],
  order: [
    ...['name', 'heardFrom', 'asked', 'openItems.what', 'lines.names.name', 'lines.names.number'],
    ...['charges.what', 'discount.why', 'agreed', 'underCostWhy', 'attachments.fileName', 'note'],
  ],
  orderEvent: ['step.by', 'step.proof.fileName', 'step.wish', 'step.note', 'step.reason'],
  payment: ['note'],
  payout: ['reference'],
  expense: ['what', 'receipt.fileName'],
  inkPrints: ['name'],
  stallDay: [
    ...['name', 'place', 'organiser', 'attachments.fileName', 'costs.what', 'hours.what', 'weathers.name'],
    ...['ranges.name', 'ranges.designs.name', 'prices.sets.name', 'takeAlong.what', 'note'],
  ],
  shop: ['contact', 'attachments.fileName', 'note'],
  stallTap: ['tap.words'],
  supplier: ['name', 'contact', 'note'],
  consumable: ['name', 'note'],
  buyingList: ['name', 'note'],
  run: ['name', 'note'],
  runStep: ['step.by', 'step.note'],
  hours: ['note'],
  pressTest: ['photo.fileName', 'note'],
  washCheck: ['note'],
  goodsIn: ['receipt.fileName', 'note'],
  faultClaim: ['step.note'],
};
