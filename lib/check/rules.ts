import { artworkRules } from '@/lib/check/artwork';
import { lawRules } from '@/lib/check/law';
import { placementRules } from '@/lib/check/placement';
import { pricePolicyRules } from '@/lib/check/pricePolicy';
import { priceRules } from '@/lib/check/priceShare';
import { quantityRules } from '@/lib/check/quantity';
import { rateRules } from '@/lib/check/rates';
import { recipeRules } from '@/lib/check/recipe';
import { stepRules } from '@/lib/check/recipeSteps';
import { resolutionRules } from '@/lib/check/resolution';
import type { Rule } from '@/lib/check/rule';
import { safetyRules } from '@/lib/check/safety';
import { sheetFitRules } from '@/lib/check/sheetFit';
import { sheetPaperRules } from '@/lib/check/sheetPaper';
import { sheetUseRules } from '@/lib/check/sheetUse';
import { substrateRules } from '@/lib/check/substrate';
import { whiteOnCloth } from '@/lib/check/substrateWhite';
import { wrapRules } from '@/lib/check/wrap';

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
  ...safetyRules,
  ...lawRules,
];
