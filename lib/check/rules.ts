import { artworkRules } from '@/lib/check/artwork/artworkRules';
import { resolutionRules } from '@/lib/check/artwork/resolution';
import { lawRules } from '@/lib/check/law/lawRules';
import { safetyRules } from '@/lib/check/law/safetyRules';
import { placementRules } from '@/lib/check/placement/placementRules';
import { wrapRules } from '@/lib/check/placement/wrapRules';
import { pricePolicyRules } from '@/lib/check/prices/pricePolicy';
import { priceRules } from '@/lib/check/prices/priceShare';
import { typedPriceRules } from '@/lib/check/prices/typedPrices';
import { quantityRules } from '@/lib/check/quantity/quantityRules';
import { rateRules } from '@/lib/check/rates/rateRules';
import { recipeRules } from '@/lib/check/recipe/recipeRules';
import { stepRules } from '@/lib/check/recipe/stepRules';
import { sheetFitRules } from '@/lib/check/sheets/sheetFit';
import { sheetPaperRules } from '@/lib/check/sheets/sheetPaper';
import { sheetUseRules } from '@/lib/check/sheets/sheetUse';
import { substrateRules } from '@/lib/check/substrate/substrateRules';
import { whiteOnCloth } from '@/lib/check/substrate/whiteOnCloth';
import type { Rule } from './rule';

/** Every rule that needs no cost. */
export const rules: readonly Rule[] = [
  ...substrateRules,
  whiteOnCloth,
  ...resolutionRules,
  ...artworkRules,
  ...sheetFitRules,
  ...sheetUseRules,
  ...sheetPaperRules,
  ...wrapRules,
  ...placementRules,
  ...recipeRules,
  ...stepRules,
  ...quantityRules,
  ...rateRules,
  ...priceRules,
  ...pricePolicyRules,
  ...typedPriceRules,
  ...safetyRules,
  ...lawRules,
];
