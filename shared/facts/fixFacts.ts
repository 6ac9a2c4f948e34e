import type { Recipe } from '@/shared/schemas/job';
import type { Press } from '@/shared/schemas/workshop';
import type { NoFacts } from './findingCase';

interface Size {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** What the words on each button need, by the key under which a rule names its button. */
export interface FixFacts {
  useTypical: { readonly typical: number; readonly unit: string };
  useOnly: { readonly name: string };
  addPress: { readonly kind: Press['kind'] };
  printForAll: Size;
  resizePrint: Size;
  smallerForSizes: Size & { readonly sizes: string };
  setTemperature: { readonly temperatureC: number };
  planRelief: NoFacts;
  boxIsMeant: NoFacts;
  whiteIsCloth: NoFacts;
  mirrorOn: NoFacts;
  mirrorOff: NoFacts;
  markApproved: { readonly count: number };
  setGutter: { readonly gutterMm: number };
  printsApart: NoFacts;
  shortenPrints: { readonly longestMm: number };
  isTransferPaper: NoFacts;
  planBarrier: NoFacts;
  setDwell: { readonly seconds: number };
  setPressure: { readonly pressure: Recipe['pressure'] };
  switchScale: { readonly typed: number; readonly meant: 'C' | 'F' };
  addPreheat: { readonly seconds: number };
  useFreshPaper: NoFacts;
  dropCharge: { readonly size: string };
  sortBreaks: { readonly rising: string };
  /** Money in currency units. */
  setPrice: { readonly price: number };
  askSuggested: { readonly price: number };
  /** Of the size whose price is taken, in currency units. */
  priceAsSize: { readonly size: string; readonly price: number };
  /** Each from the size next to it. */
  pricesAsNear: { readonly count: number };
  noFreight: NoFacts;
  countDelivery: { readonly minutes: number };
  inkOfPicture: NoFacts;
  setAlone: { readonly minutes: number };
  dropOwnPrices: { readonly count: number };
  pointDecimals: NoFacts;
  setEnding: { readonly coin: number };
  orderIsSum: { readonly total: number };
  setQuantity: { readonly quantity: number };
  divideByPack: { readonly pieces: number; readonly value: number; readonly unit: string };
  confirmToday: { readonly count: number };
  wearByUse: NoFacts;
  /** Watts. */
  othersElsewhere: { readonly others: number };
  noFoodOven: NoFacts;
  ventilate: NoFacts;
  keepLabel: NoFacts;
  reorderPresses: { readonly first: string };
  /** YYYY-MM-DD */
  moveDate: { readonly date: string };
  performanceWay: { readonly seconds: number };
  gentleTest: NoFacts;
  freshPaperTest: NoFacts;
  planTest: NoFacts;
  provenHere: NoFacts;
  faceMarked: NoFacts;
  dropClaim: NoFacts;
  claimProven: NoFacts;
  setDrop: { readonly mm: number };
  pressTogether: { readonly pieces: number };
  usePress: { readonly press: string };
  planLintRoll: NoFacts;
  planTape: NoFacts;
  planCooling: { readonly seconds: number };
  planFan: NoFacts;
  airIsRight: NoFacts;
  mixIsMeant: NoFacts;
  isForChildren: NoFacts;
  splitSessions: { readonly pieces: number };
  intoWall: NoFacts;
  stayByPress: NoFacts;
  sheetsKept: NoFacts;
  belowRim: { readonly mm: number };
  printOutside: NoFacts;
}
