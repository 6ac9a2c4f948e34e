import { artworkRules } from '@/lib/check/artwork/artworkRules';
import { resolutionRules } from '@/lib/check/artwork/resolution';
import { benchSafetyRules } from '@/lib/check/law/benchSafetyRules';
import { childGoodsRules } from '@/lib/check/law/childGoodsRules';
import { lawRules } from '@/lib/check/law/lawRules';
import { promiseRules } from '@/lib/check/law/promiseRules';
import { safetyRules } from '@/lib/check/law/safetyRules';
import { placementRules } from '@/lib/check/placement/placementRules';
import { pressFitRules } from '@/lib/check/placement/pressFitRules';
import { usualPlaceRules } from '@/lib/check/placement/usualPlaceRules';
import { wrapRules } from '@/lib/check/placement/wrapRules';
import { pricePolicyRules } from '@/lib/check/prices/pricePolicy';
import { priceRules } from '@/lib/check/prices/priceShare';
import { typedPriceRules } from '@/lib/check/prices/typedPriceRules';
import { orderRules } from '@/lib/check/quantity/orderRules';
import { quantityRules } from '@/lib/check/quantity/quantityRules';
import { rateRules } from '@/lib/check/rates/rateRules';
import { plannedStepRules } from '@/lib/check/recipe/plannedStepRules';
import { recipeRules } from '@/lib/check/recipe/recipeRules';
import { stepRules } from '@/lib/check/recipe/stepRules';
import { lyingRules } from '@/lib/check/sheets/asItLies';
import { pageLengthRules } from '@/lib/check/sheets/pageLength';
import { sheetFitRules } from '@/lib/check/sheets/sheetFit';
import { sheetPaperRules } from '@/lib/check/sheets/sheetPaper';
import { sheetUseRules } from '@/lib/check/sheets/sheetUse';
import { clothTraitRules } from '@/lib/check/substrate/clothTraitRules';
import { coatedFaceRules } from '@/lib/check/substrate/coatedFaceRules';
import { substrateRules } from '@/lib/check/substrate/substrateRules';
import { whiteOnCloth } from '@/lib/check/substrate/whiteOnCloth';
import { largerSizeRules } from './prices/largerSizeRules';
import type { Rule } from './rule';

/** Every rule that needs no cost. */
export const rules: readonly Rule[] = [
  ...substrateRules,
  whiteOnCloth,
  ...clothTraitRules,
  ...coatedFaceRules,
  ...resolutionRules,
  ...artworkRules,
  ...sheetFitRules,
  ...lyingRules,
  ...pageLengthRules,
  ...sheetUseRules,
  ...sheetPaperRules,
  ...wrapRules,
  ...placementRules,
  ...usualPlaceRules,
  ...pressFitRules,
  ...recipeRules,
  ...stepRules,
  ...plannedStepRules,
  ...quantityRules,
  ...orderRules,
  ...rateRules,
  ...priceRules,
  ...pricePolicyRules,
  ...largerSizeRules,
  ...typedPriceRules,
  ...safetyRules,
  ...benchSafetyRules,
  ...lawRules,
  ...childGoodsRules,
  ...promiseRules,
];
