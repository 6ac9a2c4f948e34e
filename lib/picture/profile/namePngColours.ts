import { type ProfileName, spaceOf } from './knownColours';
import { isUsualLight, pngLight, primariesOf } from './pngLight';

/* ITU-T H.273: primaries 1 are those of BT.709, as in sRGB, 12 those of SMPTE EG 432-1; transfer 13 is that of sRGB. */
const CODE = { bt709: 1, p3: 12, srgbTransfer: 13 } as const;

/** Names what a PNG without a profile says of its colours: PNG Specification, third edition, 11.3.2. */
export function namePngColours(dataOf: (type: string) => Uint8Array | null): ProfileName {
  const codes = dataOf('cICP');
  if (codes !== null) {
    const [primaries, transfer, matrix, full] = codes;
    if (transfer !== CODE.srgbTransfer || matrix !== 0 || full !== 1) return 'unknown';
    return primaries === CODE.bt709 ? 'sRGB' : primaries === CODE.p3 ? 'displayP3' : 'unknown';
  }
  const light = pngLight(dataOf);
  const xy = primariesOf(dataOf);
  const hasUsualCurve = light !== null && isUsualLight({ ...light, toSrgb: null });
  return hasUsualCurve && xy !== null ? (spaceOf(xy.slice(1), 'xy') ?? 'unknown') : 'unknown';
}
