import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalText } from '@/lib/stored/canonicalText';
import { sha256OfBytes, sha256OfValue } from '@/lib/stored/sha256';
import { cases } from '@/tests/tools/cases';

/** @returns the number whose 64 bits, IEEE 754, are these. */
const fromBits = (hex: string): number => {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, BigInt(`0x${hex}`));
  return view.getFloat64(0);
};
const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

describe('the one text of a value', () => {
  it('is the sample of RFC 8785, sections 3.2.2 and 3.2.3', () => {
    const sample = JSON.parse(
      String.raw`{
        "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
        "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
        "literals": [null, true, false]
      }`,
    );
    expect(canonicalText(sample)).toBe(
      String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
    );
  });

  it('is as bytes what RFC 8785, section 3.2.4, prints', () => {
    const sample = {
      numbers: [333333333.3333333, 1e30, 4.5, 2e-3, 1e-27],
      string: '€$\u000f\nA\'B"\\\\"/',
      literals: [null, true, false],
    };
    const hex = [...bytesOf(canonicalText(sample))]
      .map((byte) => byte.toString(16).padStart(2, '0'))
      .join(' ');
    expect(hex).toBe(
      '7b 22 6c 69 74 65 72 61 6c 73 22 3a 5b 6e 75 6c 6c 2c 74 72 75 65 2c 66 61 6c 73 65 5d 2c ' +
        '22 6e 75 6d 62 65 72 73 22 3a 5b 33 33 33 33 33 33 33 33 33 2e 33 33 33 33 33 33 33 2c 31 65 2b 33 30 2c ' +
        '34 2e 35 2c 30 2e 30 30 32 2c 31 65 2d 32 37 5d 2c 22 73 74 72 69 6e 67 22 3a 22 e2 82 ac 24 ' +
        '5c 75 30 30 30 66 5c 6e 41 27 42 5c 22 5c 5c 5c 5c 5c 22 2f 22 7d',
    );
  });

  it('sorts keys by their UTF-16 units, as the sorting example of RFC 8785, section 3.2.3, does', () => {
    const text = canonicalText({
      '\u20ac': 'Euro Sign',
      '\r': 'Carriage Return',
      '\ufb33': 'Hebrew Letter Dalet With Dagesh',
      '1': 'One',
      '\ud83d\ude00': 'Emoji: Grinning Face',
      '\u0080': 'Control',
      '\u00f6': 'Latin Small Letter O With Diaeresis',
    });
    expect([...text.matchAll(/":"([^"]+)"/g)].map(([, value]) => value)).toEqual([
      'Carriage Return',
      'One',
      'Control',
      'Latin Small Letter O With Diaeresis',
      'Euro Sign',
      'Emoji: Grinning Face',
      'Hebrew Letter Dalet With Dagesh',
    ]);
  });

  // RFC 8785, appendix B.
  it.each([
    ['0000000000000000', '0'],
    ['8000000000000000', '0'],
    ['0000000000000001', '5e-324'],
    ['8000000000000001', '-5e-324'],
    ['7fefffffffffffff', '1.7976931348623157e+308'],
    ['ffefffffffffffff', '-1.7976931348623157e+308'],
    ['4340000000000000', '9007199254740992'],
    ['c340000000000000', '-9007199254740992'],
    ['4430000000000000', '295147905179352830000'],
    ['44b52d02c7e14af5', '9.999999999999997e+22'],
    ['44b52d02c7e14af6', '1e+23'],
    ['44b52d02c7e14af7', '1.0000000000000001e+23'],
    ['444b1ae4d6e2ef4e', '999999999999999700000'],
    ['444b1ae4d6e2ef4f', '999999999999999900000'],
    ['444b1ae4d6e2ef50', '1e+21'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
    ['3eb0c6f7a0b5ed8d', '0.000001'],
    ['41b3de4355555553', '333333333.3333332'],
    ['41b3de4355555554', '333333333.33333325'],
    ['41b3de4355555555', '333333333.3333333'],
    ['41b3de4355555556', '333333333.3333334'],
    ['41b3de4355555557', '333333333.33333343'],
    ['becbf647612f3696', '-0.0000033333333333333333'],
    ['43143ff3c1cb0959', '1424953923781206.2'],
  ])('writes the number of the bits %s as %s', (bits, text) => {
    expect(canonicalText(fromBits(bits))).toBe(text);
  });

  it.each([
    ['no number', Number.NaN],
    ['no end', Number.POSITIVE_INFINITY],
    ['nothing', undefined],
    ['nothing within', { a: [undefined] }],
    ['half of a pair', '\ud83d'],
    ['half of a pair in a key', { '\ude00': 1 }],
  ])('is refused for %s, which JSON cannot hold', (_, value) => {
    expect(() => canonicalText(value)).toThrow('JSON cannot hold');
  });

  it('says the same of the same value, in whatever order its keys come, and reads back as it', () => {
    fc.assert(
      fc.property(fc.jsonValue({ noUnicodeString: false }), (value) => {
        const text = (() => {
          try {
            return canonicalText(value);
          } catch {
            return null;
          }
        })();
        fc.pre(text !== null);
        expect(canonicalText(turned(value))).toBe(text);
        // A minus before nothing is the one thing JSON does not keep.
        expect(canonicalText(JSON.parse(text ?? ''))).toBe(text);
      }),
      cases(500),
    );
  });
});

/** The same value with the keys of every object the other way round. */
function turned(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(turned);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, part]) => [key, turned(part)]),
  );
}

// FIPS 180-4; the messages and digests are those of NIST's examples for SHA-256 and, for the empty message, of its
// short-message vectors (CAVP).
describe('SHA-256', () => {
  it.each([
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
  ])('of “%s” is what the standard prints', (message, digest) => {
    expect(sha256OfBytes(bytesOf(message))).toBe(digest);
  });

  it('of a value is that of the bytes of its one text', () => {
    expect(sha256OfValue({ b: 'ö', a: 1 })).toBe(sha256OfBytes(bytesOf('{"a":1,"b":"ö"}')));
  });
});
