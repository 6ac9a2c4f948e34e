import { lazy } from '@/app/_network/lazy';

/** Parts of the evening that are fetched behind what is seen first. */
export const laterParts = {
  coins: lazy(() => import('./slips/CoinFields').then(({ CoinFields }) => CoinFields)),
  closing: lazy(() => import('./CloseBar').then(({ CloseBar }) => CloseBar)),
  profit: lazy(() => import('./slips/ProfitRows').then(({ ProfitRows }) => ProfitRows)),
  fairs: lazy(() => import('./slips/FairsCompared').then(({ FairsCompared }) => FairsCompared)),
  leads: lazy(() => import('./slips/LeadRows').then(({ LeadRows }) => LeadRows)),
} as const;
