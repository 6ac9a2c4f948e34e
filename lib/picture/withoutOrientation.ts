import type { BytePlace } from './pictureHeader';

/**
 * The same file without its orientation, so that decoders give the picture as stored and it is turned here,
 * exactly once: browsers differ in which formats they turn by themselves.
 */
export function withoutOrientation(bytes: Uint8Array, place: BytePlace): Uint8Array<ArrayBuffer> {
  switch (place.holds) {
    case 'chunk': {
      const rest = new Uint8Array(bytes.length - place.length);
      rest.set(bytes.subarray(0, place.at));
      rest.set(bytes.subarray(place.at + place.length), place.at);
      return rest;
    }
    case 'valueBigEnd':
    case 'valueLittleEnd': {
      const copy = new Uint8Array(bytes);
      copy.set(place.holds === 'valueBigEnd' ? [0, 1] : [1, 0], place.at);
      return copy;
    }
    default:
      return place.holds satisfies never;
  }
}
