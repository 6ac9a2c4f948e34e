import { expect, test } from 'vitest';
import { installNeeded } from '@/app/_commands/installNeeded.mjs';

const wanted = {
  packages: {
    '': { version: '0.1.0' },
    'node_modules/a': { version: '1.0.0' },
    'node_modules/a-for-another-system': { version: '1.0.0', optional: true },
  },
};

test('nothing is installed when every package is there in its version', () => {
  expect(installNeeded(wanted, { packages: { 'node_modules/a': { version: '1.0.0' } } })).toBe(false);
});

test.each([
  ['there is no record of an installation', undefined],
  ['a package is missing', { packages: {} }],
  ['a package has another version', { packages: { 'node_modules/a': { version: '1.0.1' } } }],
  [
    'an optional package that is there has another version',
    {
      packages: {
        'node_modules/a': { version: '1.0.0' },
        'node_modules/a-for-another-system': { version: '0.9.0' },
      },
    },
  ],
])('packages are installed when %s', (_, installed) => {
  expect(installNeeded(wanted, installed)).toBe(true);
});
