import type { ArtworkVersion, OutOf } from '@/lib/orders/orderFacts';
import type { Blank } from '@/shared/schemas/blank';
import type { Job } from '@/shared/schemas/job';
import type { FrozenRate } from '@/shared/schemas/priceList';

interface NowSource {
  /** The quote of the order that is repeated. */
  readonly quote: OutOf<'quote'>;
  /** Rates that its jobs stand on today. */
  readonly ratesNow: readonly Pick<FrozenRate, 'place' | 'label' | 'value' | 'unit'>[];
  readonly artworksNow: readonly ArtworkVersion[];
  /** The jobs of the repeat. */
  readonly jobs: readonly Job[];
  readonly blanks: Readonly<Record<string, Blank>>;
  readonly taxNow: { readonly mode: 'added' | 'inside' | 'none'; readonly share: number };
}

/** What is otherwise than it was when the order was quoted. */
interface ChangedSince {
  readonly rates: readonly {
    readonly label: string;
    readonly was: number;
    readonly is: number;
    readonly unit: string;
  }[];
  readonly artworks: readonly { readonly artworkId: string; readonly was: number; readonly is: number }[];
  readonly tax: { readonly was: number; readonly is: number } | null;
  /** Of lines whose blank is gone. */
  readonly goneBlanks: readonly string[];
  readonly goneSizes: readonly { readonly line: string; readonly size: string }[];
}

/** Holds the quote of an order against today, so that a repeat surprises nobody. */
export function changedSince(source: NowSource): ChangedSince {
  const { quote, ratesNow, artworksNow, jobs, blanks, taxNow } = source;
  const { owner, goods, tax } = quote.body;
  const now = new Map(ratesNow.map((rate) => [rate.place, rate]));
  const versions = new Map(artworksNow.map(({ artworkId, version }) => [artworkId, version]));
  const shown = new Map(
    goods.flatMap(({ prints }) => prints.map(({ artwork }) => [artwork.artworkId, artwork.version] as const)),
  );
  const lines = jobs.flatMap((job) => job.lines);
  const blankOf = (id: string): Blank | undefined => (Object.hasOwn(blanks, id) ? blanks[id] : undefined);
  const [was, is] = [shareOf(tax), shareOf(taxNow)];
  return {
    rates: owner.rates.flatMap(({ place, label, value, unit }) => {
      const rate = now.get(place);
      return rate === undefined || (rate.value === value && rate.unit === unit)
        ? []
        : [{ label, was: value, is: rate.value, unit: rate.unit }];
    }),
    artworks: [...shown].flatMap(([artworkId, version]) => {
      const present = versions.get(artworkId);
      return present === undefined || present === version ? [] : [{ artworkId, was: version, is: present }];
    }),
    tax: was === is ? null : { was, is },
    goneBlanks: lines.flatMap(({ name, blankId }) => (blankOf(blankId) === undefined ? [name] : [])),
    goneSizes: lines.flatMap(({ name, blankId, quantities }) => {
      const blank = blankOf(blankId);
      return blank === undefined
        ? []
        : quantities.flatMap(({ size, quantity }) =>
            quantity === 0 || blank.sizes.some((one) => one.name === size) ? [] : [{ line: name, size }],
          );
    }),
  };
}

const shareOf = ({ mode, share }: NowSource['taxNow']): number => (mode === 'none' ? 0 : share);
