import type { FindingId } from '@/shared/tables/findingIds';
import type { ArtworkFacts } from './artworkFacts';
import type { DocumentFacts } from './documentFacts';
import type { PlacementFacts } from './placementFacts';
import type { PriceFacts } from './priceFacts';
import type { QuantityFacts } from './quantityFacts';
import type { RateFacts } from './rateFacts';
import type { RecipeFacts } from './recipeFacts';
import type { RowFacts } from './rowFacts';
import type { SafetyFacts } from './safetyFacts';
import type { SheetFacts } from './sheetFacts';
import type { SubstrateFacts } from './substrateFacts';
import type { TimeFacts } from './timeFacts';

interface EveryCase
  extends DocumentFacts,
    SubstrateFacts,
    ArtworkFacts,
    SheetFacts,
    PlacementFacts,
    RecipeFacts,
    QuantityFacts,
    RateFacts,
    PriceFacts,
    RowFacts,
    TimeFacts,
    SafetyFacts {}

/** The ways a finding is put, each with its facts. An id without a row in the tables does not compile. */
export type CaseOf<Id extends FindingId> = EveryCase[Id];
