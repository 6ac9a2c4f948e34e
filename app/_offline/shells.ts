/** A page of the app as the server sends it, and the addresses that it is sent for. */
interface Shell {
  /** Where it is a page of its own. */
  readonly page: string;
  /** A part that begins with a colon stands for any one: which document it is, the page reads from the address. */
  readonly address: string;
}

/** Every page there is. One that is left out would not open without a network. */
export const shells = [
  { page: '/', address: '/' },
  { page: '/jobs', address: '/jobs' },
  { page: '/jobs/one', address: '/jobs/:id' },
  { page: '/jobs/one/sheet', address: '/jobs/:id/sheet' },
  { page: '/orders', address: '/orders' },
  { page: '/orders/one', address: '/orders/:id' },
  { page: '/customers', address: '/customers' },
  { page: '/customers/one', address: '/customers/:id' },
  { page: '/stall/one/evening', address: '/stall/:id/evening' },
  { page: '/stall/one/count', address: '/stall/:id/count' },
  { page: '/stall', address: '/stall' },
  // Before whatever stands for any stall day.
  { page: '/stall/shops', address: '/stall/shops' },
  { page: '/stall/shops/one', address: '/stall/shops/:id' },
  { page: '/stall/one', address: '/stall/:id' },
  // Before whatever stands for any run.
  { page: '/making/suppliers', address: '/making/suppliers' },
  { page: '/making/buying', address: '/making/buying' },
  { page: '/making/buying/one', address: '/making/buying/:id' },
  { page: '/making/stock', address: '/making/stock' },
  { page: '/making/log', address: '/making/log' },
  { page: '/making/one/after', address: '/making/:id/after' },
  { page: '/making', address: '/making' },
  { page: '/making/one', address: '/making/:id' },
  { page: '/making/one/press', address: '/making/:id/press' },
  { page: '/blanks', address: '/blanks' },
  { page: '/price-lists', address: '/price-lists' },
  { page: '/price-lists/one', address: '/price-lists/:id' },
  { page: '/year', address: '/year' },
  { page: '/workshop', address: '/workshop' },
  { page: '/start', address: '/start' },
] as const satisfies readonly Shell[];

/** The page that is sent for an address; null where there is none. */
export function pageAt(path: string): string | null {
  const parts = path.split('/');
  const found = shells.find(({ address }) => {
    const wanted = address.split('/');
    return (
      wanted.length === parts.length &&
      wanted.every((part, place) => (part.startsWith(':') ? parts[place] !== '' : part === parts[place]))
    );
  });
  return found?.page ?? null;
}
