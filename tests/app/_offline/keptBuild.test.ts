import { describe, expect, it } from 'vitest';
import { isPageOf, type KeptBuild } from '@/app/_offline/keptBuild';

const build: KeptBuild = {
  build: 'build-one',
  pages: ['/'],
  files: ['/_next/static/chunks/a.js', '/_next/static/chunks/b.css'],
  named: [],
};

const page = (name: string, ...files: readonly string[]) =>
  `<html>${files.map((file) => `<script src="${file}"></script>`).join('')}<script>{"b":"${name}"}</script></html>`;

describe('a page that is to be kept', () => {
  it('is of the build when it says so and asks for files of it alone', () => {
    expect(
      isPageOf(build, page('build-one', '/_next/static/chunks/a.js', '/_next/static/chunks/b.css')),
    ).toBe(true);
    expect(isPageOf(build, page('build-one', '/_next/static/chunks/a.js?dpl=build-one'))).toBe(true);
  });

  it('is not when it asks for a file that the build has not', () => {
    expect(isPageOf(build, page('build-one', '/_next/static/chunks/a.js', '/_next/static/chunks/c.js'))).toBe(
      false,
    );
  });

  it('is not when another build sent it with the same files', () => {
    expect(isPageOf(build, page('build-two', '/_next/static/chunks/a.js'))).toBe(false);
  });

  it('is not when it is somebody else’s page that answers to every address', () => {
    expect(isPageOf(build, '<html>Sign in to the café’s network, build-one</html>')).toBe(false);
  });
});
