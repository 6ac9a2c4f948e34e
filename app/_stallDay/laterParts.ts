import { lazy } from '@/app/_network/lazy';

/** What is folded away, fetched behind what is seen first. */
export const laterParts = {
  closed: lazy(() => import('./closed/ClosedDay').then(({ ClosedDay }) => ClosedDay)),
  noted: lazy(() => import('./head/NotedBefore').then(({ NotedBefore }) => NotedBefore)),
  troubles: lazy(() => import('./TroubleList').then(({ TroubleList }) => TroubleList)),
  day: lazy(() => import('./day/DayFields').then(({ DayFields }) => DayFields)),
  papers: lazy(() => import('./day/ProofFields').then(({ ProofFields }) => ProofFields)),
  costs: lazy(() => import('./day/CostFields').then(({ CostFields }) => CostFields)),
  hours: lazy(() => import('./day/HourFields').then(({ HourFields }) => HourFields)),
  power: lazy(() => import('./day/PowerFields').then(({ PowerFields }) => PowerFields)),
  checks: lazy(() => import('@/app/_stallChecks/StallChecks').then(({ StallChecks }) => StallChecks)),
  note: lazy(() => import('./day/NoteFields').then(({ NoteFields }) => NoteFields)),
  goods: lazy(() => import('./goods/GoodsFields').then(({ GoodsFields }) => GoodsFields)),
  limits: lazy(() => import('./bring/LimitFields').then(({ LimitFields }) => LimitFields)),
  why: lazy(() => import('./bring/WhyAdvised').then(({ WhyAdvised }) => WhyAdvised)),
  chances: lazy(() => import('./weather/ChanceFields').then(({ ChanceFields }) => ChanceFields)),
  spread: lazy(() => import('./weather/SpreadTold').then(({ SpreadTold }) => SpreadTold)),
  sold: lazy(() => import('./weather/SoldTable').then(({ SoldTable }) => SoldTable)),
  making: lazy(() => import('@/app/_stallMaking/MakingSection').then(({ MakingSection }) => MakingSection)),
  prices: lazy(() => import('@/app/_stallPrices/PricesPart').then(({ PricesPart }) => PricesPart)),
  car: lazy(() => import('@/app/_stallCar/CarPart').then(({ CarPart }) => CarPart)),
  saved: lazy(() => import('./stay/SavedTable').then(({ SavedTable }) => SavedTable)),
} as const;
