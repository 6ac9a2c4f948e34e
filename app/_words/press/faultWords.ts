import type { FaultMove } from '@/lib/pressing/faultRules';
import type { PressFault } from '@/shared/tables/faults';

/** What the eye sees, on a key. */
export const faultNames: Readonly<Record<PressFault, string>> = {
  pale: 'Pale',
  patchy: 'Patchy',
  scorched: 'Scorched',
  blurred: 'Blurred',
  ghost: 'Ghost',
  specks: 'Specks',
  steam: 'Steam spots',
  pressLines: 'Press lines',
  bands: 'Bands',
  reversed: 'Reversed',
  shade: 'Other shade',
  crooked: 'Crooked',
  other: 'Something else',
};

/** What each looks like. */
export const faultSigns: Readonly<Record<PressFault, string>> = {
  pale: 'dull or pale all over, much dye left on the paper',
  patchy: 'pale in patches or at one corner',
  scorched: 'yellow, brown or shiny cloth',
  blurred: 'blurred, a halo, small text filled',
  ghost: 'a double image',
  specks: 'blue or red specks',
  steam: 'steam spots, mottled',
  pressLines: 'lines or a box from the press',
  bands: 'bands, or a colour missing',
  reversed: 'text reads backwards',
  shade: 'another shade than the lot before',
  crooked: 'not where it belongs',
  other: 'none of these',
};

/** One thing to do, as a sentence. */
export const moveWords: Readonly<Record<FaultMove, string>> = {
  dwellLonger: 'Press 5 to 10 s longer.',
  hotter: 'Set it 5 °F (3 °C) hotter.',
  measurePlaten: 'Measure the platen with strips or a probe, all over.',
  checkProfileAndSide: 'Check the colour profile, and that the coated side was printed.',
  pressurePadSeams: 'Look at pressure and pad, and keep seams off the platen.',
  edgeAllowance: 'Keep the print farther from the edge of the platen.',
  dwellShorter: 'Press 5 to 10 s shorter.',
  cooler: 'Set it 5 °F (3 °C) cooler.',
  lessPressure: 'Press with less pressure.',
  drierPaper: 'Use drier paper.',
  lowerInkLimit: 'Lower the ink limit.',
  coolFaster: 'Cool it faster.',
  tapeCoolLift: 'Tape all four edges, cool in place, lift straight.',
  pressPillow: 'Press on a pillow.',
  retapeTighter: 'Tape it anew, tighter.',
  lintPadPaper: 'Lint roll, clean the pad, take fresh paper.',
  roomDampness: 'Look at static and dampness in the room.',
  preheatLonger: 'Preheat longer, then let it cool.',
  storeSealed: 'Store the paper sealed.',
  pillowAndTornEdges: 'Pillow under the print, torn paper edges.',
  coolerLonger: 'Set it cooler, and press longer.',
  nozzleCheck: 'Check the nozzles, clean once, wait.',
  realign: 'Align the head. Do not clean more than three times in a row.',
  mirrorCheck: 'Check that the file is mirrored before the next sheet is printed.',
  newProfile: 'Make a new profile, or have a new swatch approved.',
  straightenFirst: 'Measure from the collar and tape it before it goes in.',
};

/** @returns what to do first, or that nothing more is known */
export const nextMoveWords = (move: FaultMove | null): string =>
  move === null
    ? 'All that is known was tried. Begin anew from the last test that was good.'
    : moveWords[move];

export const ONE_AT_A_TIME = 'Change one thing at a time.';
