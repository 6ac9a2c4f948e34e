/* IEC 61966-2-1: the published constants leave a gap near 2e-9 at the joint, far below anything printed. */
const JOINT_ENCODED = 0.04045;
const JOINT_LINEAR = 0.0031308;
const SLOPE = 12.92;
const OFFSET = 0.055;
const GAMMA = 2.4;

/** @returns the linear light, 0–1, of an encoded sRGB value, 0–1. */
export const decodeSrgb = (encoded: number): number =>
  encoded <= JOINT_ENCODED ? encoded / SLOPE : ((encoded + OFFSET) / (1 + OFFSET)) ** GAMMA;

/** @returns the encoded sRGB value, 0–1, of linear light, 0–1. */
export const encodeSrgb = (linear: number): number =>
  linear <= JOINT_LINEAR ? linear * SLOPE : (1 + OFFSET) * linear ** (1 / GAMMA) - OFFSET;
