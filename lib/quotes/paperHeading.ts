import type { Heading } from '@/lib/papers/bodies/heading';
import { englishLabels, type Labels } from '@/lib/papers/words/englishLabels';
import { labelsFor } from '@/lib/papers/words/labelsFor';
import type { Customer } from '@/shared/schemas/customer';
import type { PaperNumber } from '@/shared/schemas/happened';
import type { Order } from '@/shared/schemas/order';
import type { OrderNumber } from '@/shared/schemas/orderEvents';
import type { Quote } from '@/shared/schemas/orderPapers';
import type { Workshop } from '@/shared/schemas/workshop';
import { letterRegions } from '@/shared/tables/regions';
import type { QuoteAsked } from './quoteAsked';

/** What every paper of an order bears at its head, and of which order it is. */
export type PaperHeading = Heading & Pick<Quote, 'orderId'>;

interface OfPaper {
  readonly orderId: string;
  readonly order: Order;
  readonly orderNumber: OrderNumber | null;
  readonly customer: Customer;
  readonly workshop: Workshop;
  readonly day: string;
}

/** @returns a paper's head but for its number, which it is given when it is kept. */
export const paperHeading = ({
  orderId,
  order,
  orderNumber,
  customer,
  workshop,
  day,
}: OfPaper): Omit<PaperHeading, 'number'> => ({
  orderId,
  order: orderNumber,
  issuedOn: day,
  title: order.name,
  ...paperStyle({ order, customer, workshop }),
  customer: customerOnPaper(order, customer),
});

/** @returns how a paper of an order is written and who writes it, to whomever it goes. */
export const paperStyle = ({
  order,
  customer,
  workshop,
}: Pick<OfPaper, 'order' | 'workshop'> & { readonly customer: Customer | null }) =>
  workshopStyle(workshop, paperLanguage({ order, customer, workshop }));

/** @returns how a workshop writes its papers and who writes them; in its own language unless another is named. */
export function workshopStyle(
  { name, seller, papers, locale, units, currency }: Workshop,
  language = languageOf(locale),
): Pick<PaperHeading, 'language' | 'locale' | 'length' | 'page' | 'currency' | 'seller'> {
  return {
    language,
    locale: localeOf(language, locale),
    length: units.length,
    page: papers.page ?? (letterRegions.includes(regionIn(locale)) ? 'letter' : 'a4'),
    currency,
    seller: {
      name: seller.name.trim() === '' ? name : seller.name,
      tagline: seller.tagline,
      address: seller.address,
      contact: seller.contact,
      taxNumber: seller.taxNumber,
      howToPay: seller.howToPay,
      logo: seller.logo === null ? null : { fileId: seller.logo.fileId, fileName: seller.logo.fileName },
    },
  };
}

/** @returns the words of an order's papers, in the language of whoever gets them. */
export function labelsOfOrder({
  order,
  customer,
  jobs,
}: Pick<QuoteAsked, 'order' | 'customer' | 'jobs'>): Labels {
  const workshop = jobs[0]?.input.workshop;
  return workshop === undefined
    ? englishLabels
    : labelsFor(paperLanguage({ order, customer, workshop }), workshop.papers.words);
}

/** @returns the head of one paper for another that answers it: only day and number are its own. */
export function headingLike(
  { orderId, order, title, language, locale, length, page, currency, seller, customer }: PaperHeading,
  { number, day }: { readonly number: PaperNumber; readonly day: string },
): PaperHeading {
  return {
    ...{ orderId, order, number, issuedOn: day, title },
    ...{ language, locale, length, page, currency, seller, customer },
  };
}

// Helpers

const paperLanguage = ({
  order,
  customer,
  workshop,
}: Pick<OfPaper, 'order' | 'workshop'> & { readonly customer: Customer | null }): string =>
  order.language ?? customer?.language ?? languageOf(workshop.locale);

function customerOnPaper(order: Order, customer: Customer): Quote['customer'] {
  const person = customer.people.find(({ id }) => id === order.personId) ?? customer.people[0];
  const bills = customer.addresses.find(({ purpose }) => purpose !== 'goods') ?? customer.addresses[0];
  return {
    name: customer.name,
    person: person?.name ?? '',
    address: bills?.text ?? '',
    contact: [person?.email, person?.phone].filter(Boolean).join(', '),
    taxNumber: customer.taxNumber,
  };
}

const languageOf = (locale: string): string => locale.split('-')[0] ?? 'en';

/** Figures and days in the customer's language as they are written where the workshop is. */
function localeOf(language: string, locale: string): string {
  if (languageOf(language) === languageOf(locale)) return locale;
  const region = regionIn(locale);
  return language.includes('-') || region === '' ? language : `${language}-${region}`;
}

function regionIn(locale: string): string {
  try {
    return new Intl.Locale(locale).maximize().region ?? '';
  } catch {
    return '';
  }
}
