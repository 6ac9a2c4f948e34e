import type { FindingId } from './findingIds';

/** A limit of a check, with its unit and where it comes from. */
interface Threshold {
  readonly value: number;
  readonly unit:
    | 'share'
    | 'L*'
    | 'C*'
    | 'ppi'
    | 'px'
    | 'mm'
    | '°C'
    | '°'
    | 's'
    | 'kPa'
    | 'pieces'
    | 'days'
    | 'g/m²'
    | 'presses'
    | 'times'
    | 'h'
    | 'min';
  readonly source: string;
}

const practice = 'common practice';
const memory = 'common practice, from memory';

const limit = (value: number, unit: Threshold['unit'], source: string): Threshold => ({
  value,
  unit,
  source,
});
const inches = (value: number, source: string): Threshold => limit(value * 25.4, 'mm', source);

/** Limits of the check by subject. Lengths whose source speaks in inches are kept as exact multiples of 25.4. */
export const thresholds = {
  polyester: {
    least: limit(0.5, 'share', memory),
    faded: limit(0.65, 'share', practice),
    full: limit(0.95, 'share', practice),
    /** Fibres on a label may miss the whole by this much: tolerance of 16 CFR 303.43. */
    labelTolerance: limit(0.03, 'share', '16 CFR 303.43, from memory'),
  },
  fibres: {
    stretch: limit(0.1, 'share', memory),
    lowMelt: limit(0.2, 'share', memory),
  },
  /** Ink over the print's box from which dye gas goes through to the other side of a bag. */
  throughInk: limit(1, 'share', memory),
  colour: {
    whiteLightness: limit(90, 'L*', 'CIE L*a*b* (ISO/CIE 11664-4); limit from memory'),
    whiteChroma: limit(5, 'C*', 'CIE L*a*b* (ISO/CIE 11664-4); limit from memory'),
    nearWhiteLightness: limit(85, 'L*', 'CIE L*a*b* (ISO/CIE 11664-4); limit from memory'),
    darkLightness: limit(70, 'L*', 'CIE L*a*b* (ISO/CIE 11664-4); limit from memory'),
    tintChroma: limit(15, 'C*', 'CIE L*a*b* (ISO/CIE 11664-4); limit from memory'),
  },
  /** Pixels per inch of the picture at its printed size. */
  resolution: {
    cloth: {
      least: limit(100, 'ppi', memory),
      soft: limit(150, 'ppi', practice),
      clean: limit(200, 'ppi', practice),
    },
    hardGood: {
      least: limit(150, 'ppi', memory),
      clean: limit(250, 'ppi', memory),
    },
    /** Densities are stored in rounded units; nobody sees a hundredth. */
    tolerance: limit(0.01, 'ppi', 'PNG (ISO/IEC 15948) stores 600 ppi as 599.9988'),
  },
  shape: {
    note: limit(0.02, 'share', practice),
    caution: limit(0.05, 'share', practice),
  },
  ink: {
    heavy: limit(2.5, 'share', memory),
    tooHeavy: limit(3, 'share', memory),
    /** Share of the pixels read whose channels add to more than 180 %. */
    heavyPixels: limit(0.1, 'share', memory),
    tooHeavyPixels: limit(0.4, 'share', memory),
  },
  /** What pixels tell of a picture file. */
  picture: {
    softEdge: limit(3, 'px', 'Marziliano and others, ICIP 2002, for the measure; limit by eye'),
    /** Smoothed edges alone make up less. */
    fading: limit(0.02, 'share', 'by eye, on drawings with smoothed edges'),
    /** Packing a JPEG leaves fewer pale pixels around letters. */
    halo: limit(0.01, 'share', 'by eye, on JPEG drawings'),
    /** Half a per cent: the eyes of a figure, a line of letters. */
    white: limit(0.005, 'share', practice),
  },
  /** The smallest letters and lines at their printed size. */
  finest: {
    capOnCloth: limit(3, 'mm', memory),
    capOnHardGood: limit(2, 'mm', memory),
    lineOnCloth: limit(0.5, 'mm', memory),
    /** Light on dark fills in from both sides. */
    reversed: limit(1.5, 'times', practice),
  },
  bleed: {
    least: limit(1.5, 'mm', practice),
    clear: limit(3, 'mm', practice),
    /** Two edges this near are one to the eye. */
    atEdge: limit(0.5, 'mm', practice),
  },
  safeZone: limit(6, 'mm', practice),
  wrap: {
    overlap: limit(1.5, 'mm', practice),
    gap: limit(1.5, 'mm', practice),
    lean: limit(1, '°', practice),
    tooSteep: limit(3, '°', memory),
  },
  /** Smaller pieces can be neither cut nor taped, and are a slip of the unit. */
  leastPrint: limit(5, 'mm', practice),
  tape: {
    least: inches(0.125, memory),
    clear: inches(0.25, practice),
  },
  gutter: {
    least: inches(0.125, practice),
    clear: inches(0.25, practice),
  },
  /** Clean paper beside a print on cloth that keeps a crease. */
  paperLine: inches(0.5, practice),
  /** Share of the paper a printer reaches that full sheets cover. */
  sheetFill: limit(0.45, 'share', 'arithmetic'),
  paper: {
    light: limit(90, 'g/m²', 'grammage by ISO 536; limit from memory'),
    /** Ink over the print's box, from pixels and as entered. */
    read: limit(1.5, 'share', memory),
    entered: limit(2, 'share', memory),
  },
  fill: {
    /** Share of the largest print above which seams and hems come close. */
    near: limit(0.95, 'share', practice),
    tiny: limit(0.25, 'share', memory),
    wide: limit(0.65, 'share', memory),
  },
  /** Top of a centred print below the collar seam. */
  collar: {
    front: { least: inches(1.25, practice), usual: inches(2, practice), most: inches(4, practice) },
    youthFront: { least: inches(1.5, practice), usual: inches(2, practice), most: inches(2.5, practice) },
    back: { least: inches(3, practice), usual: inches(3.5, practice), most: inches(4, practice) },
  },
  /** The longer side of a chest badge. */
  badge: {
    least: inches(2.5, practice),
    usualLeast: inches(3, practice),
    usualMost: inches(4, practice),
    most: inches(4.5, practice),
  },
  /** Largest prints on children's clothes where the blank states none. */
  childPrint: {
    youth: { width: inches(9, practice), height: inches(12, practice) },
    toddler: { width: inches(6, practice), height: inches(6, practice) },
  },
  betweenPieces: inches(0.5, practice),
  /** Of a cup, below its rim. */
  lipZone: limit(20, 'mm', 'common practice of ceramics, from memory'),
  platenEdge: inches(0.5, practice),
  safeTemperature: {
    near: limit(5, '°C', memory),
    /** Polyester melts at about 250 °C: Morton and Hearle, Physical Properties of Textile Fibres, fig. 6.2. */
    polyester: limit(230, '°C', 'Morton and Hearle: polyester melts at about 250 °C'),
  },
  recipe: {
    /** 15 °F. */
    temperatureOff: limit(15 / 1.8, '°C', practice),
    /** Dials step in whole degrees, of either scale. */
    temperatureStep: limit(0.5, '°C', 'half a step of a dial in whole degrees'),
    dwellOff: limit(15, 's', practice),
    /** 20 and 60 psi; 40 psi is usual. */
    pressureLow: limit(20 * 6.894757293168, 'kPa', practice),
    pressureUsual: limit(40 * 6.894757293168, 'kPa', practice),
    pressureHigh: limit(60 * 6.894757293168, 'kPa', practice),
    preheat: limit(10, 's', practice),
    provenFew: limit(10, 'presses', practice),
  },
  steps: {
    /** 10 to 15 s under the transfer, of which the least is asked. */
    cool: limit(10, 's', practice),
    /** Performance cloth marks and bleeds from here on: 30 to 40 s are usual. */
    performanceDwell: limit(40, 's', practice),
  },
  air: {
    dry: limit(0.35, 'share', practice),
    damp: limit(0.65, 'share', practice),
  },
  quantity: {
    plausible: limit(2000, 'pieces', practice),
    /** Fewer pieces have no mix to speak of. */
    mixFrom: limit(12, 'pieces', practice),
    mixOff: limit(0.15, 'share', practice),
  },
  spares: {
    /** That every size comes out whole: between spares that lie about and a second order. */
    usual: limit(0.75, 'share', practice),
    /** Where no more can be had in time. */
    sure: limit(0.95, 'share', practice),
  },
  rateAge: {
    note: limit(90, 'days', practice),
    caution: limit(365, 'days', practice),
  },
  /** How far above the typical a price may be before it looks like the price of a pack. */
  packRatio: limit(8, 'times', practice),
  load: {
    full: limit(1, 'share', 'arithmetic'),
    busy: limit(0.85, 'share', 'operations practice, from memory'),
  },
  run: {
    long: limit(4, 'h', memory),
    tooLong: limit(8, 'h', memory),
  },
  duty: {
    full: limit(1, 'times', 'the maker of the machine'),
    double: limit(2, 'times', practice),
  },
  alone: limit(5, 'min', practice),
  orderSoon: limit(2, 'days', practice),
  circuit: {
    /** Load of 3 hours or more is held to 80 % of the breaker. */
    continuous: limit(0.8, 'share', 'NFPA 70, continuous load'),
    full: limit(1, 'share', 'volts times amps'),
  },
} as const;

/** Temperatures that only make sense in the other scale, as the numbers typed (REC-04). */
export const scaleSlips = {
  /** 180–215 typed as °F is meant as °C. */
  F: { from: 180, to: 215, meant: 'C' },
  /** 370–420 typed as °C is meant as °F. */
  C: { from: 370, to: 420, meant: 'F' },
} as const;

/** Stops that no reason passes, because nothing true could be made or priced behind them. */
export const neverWaived: readonly FindingId[] = [
  'DOC-01',
  'DOC-02',
  'QTY-01',
  'QTY-02',
  'QTY-04',
  'RATE-01',
  'RATE-06',
  'REC-04',
  'LAY-01',
  'LAY-10',
  'SUB-09',
];
