import { draftFacts } from '@/lib/kinds/draftFacts';
import { entryFacts } from '@/lib/kinds/entryFacts';
import type { EntryBodies } from '@/lib/kinds/entryKinds';
import type { DocumentBodies } from '@/lib/kinds/kinds';
import { paperFacts } from '@/lib/kinds/paperFacts';
import type { PaperBodies } from '@/lib/kinds/paperKinds';
import type { rareSchemas } from '@/lib/kinds/rareSchemas';
import { withSchemas } from '@/lib/kinds/withSchemas';
import type { BodySchema, EntryRegistry, PaperRegistry, Registry } from '@/lib/stored/registry';

type RareSchemas = typeof rareSchemas;

/** How everything a store holds is read, part of it once `fetchRare` has come through. */
interface AppKinds {
  readonly registry: Registry<DocumentBodies>;
  readonly paperKinds: PaperRegistry<PaperBodies>;
  readonly entryKinds: EntryRegistry<EntryBodies>;
  /** Fetches what is not here yet; after a failure it fetches again. Nothing may be read before. */
  readonly fetchRare: () => Promise<void>;
}

/** @param load one attempt to fetch the schemas of rare kinds */
export function appKinds(load: () => Promise<RareSchemas>): AppKinds {
  let here: RareSchemas | null = null;
  const later = <Body>(kind: string, of: (schemas: RareSchemas) => BodySchema<Body>): BodySchema<Body> => {
    const schema = (): BodySchema<Body> => {
      if (here === null) throw new Error(`A ${kind} was to be read before its schema was here.`);
      return of(here);
    };
    return {
      parse: (body, how) => schema().parse(body, how),
      safeParse: (body, how) => schema().safeParse(body, how),
    };
  };
  return {
    registry: withSchemas(draftFacts, {
      supplier: later('supplier', ({ drafts }) => drafts.supplier),
      consumable: later('consumable', ({ drafts }) => drafts.consumable),
      buyingList: later('buyingList', ({ drafts }) => drafts.buyingList),
      run: later('run', ({ drafts }) => drafts.run),
    }),
    entryKinds: withSchemas(entryFacts, {
      pressing: later('pressing', ({ entries }) => entries.pressing),
      blankFault: later('blankFault', ({ entries }) => entries.blankFault),
      sheetsPrinted: later('sheetsPrinted', ({ entries }) => entries.sheetsPrinted),
      runActual: later('runActual', ({ entries }) => entries.runActual),
      runStep: later('runStep', ({ entries }) => entries.runStep),
      hours: later('hours', ({ entries }) => entries.hours),
      pressTest: later('pressTest', ({ entries }) => entries.pressTest),
      washCheck: later('washCheck', ({ entries }) => entries.washCheck),
      goodsIn: later('goodsIn', ({ entries }) => entries.goodsIn),
      faultClaim: later('faultClaim', ({ entries }) => entries.faultClaim),
      rateTaken: later('rateTaken', ({ entries }) => entries.rateTaken),
    }),
    paperKinds: withSchemas(paperFacts, {
      priceListVersion: later('priceListVersion', ({ papers }) => papers.priceListVersion),
      quote: later('quote', ({ papers }) => papers.quote),
      confirmation: later('confirmation', ({ papers }) => papers.confirmation),
      paymentRequest: later('paymentRequest', ({ papers }) => papers.paymentRequest),
      invoice: later('invoice', ({ papers }) => papers.invoice),
      receipt: later('receipt', ({ papers }) => papers.receipt),
      creditNote: later('creditNote', ({ papers }) => papers.creditNote),
      proof: later('proof', ({ papers }) => papers.proof),
      deliveryNote: later('deliveryNote', ({ papers }) => papers.deliveryNote),
      stallPlan: later('stallPlan', ({ papers }) => papers.stallPlan),
      dayClose: later('dayClose', ({ papers }) => papers.dayClose),
      runStandard: later('runStandard', ({ papers }) => papers.runStandard),
      supplyOrder: later('supplyOrder', ({ papers }) => papers.supplyOrder),
    }),
    fetchRare: async () => {
      here ??= await load();
    },
  };
}
