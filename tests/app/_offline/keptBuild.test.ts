import { describe, expect, it } from 'vitest';
import { isAnswerOf, type KeptBuild } from '@/app/_offline/keptBuild';

const build: KeptBuild = {
  build: 'build-one',
  pages: ['/'],
  files: ['/_next/static/chunks/a.js', '/_next/static/chunks/b.css'],
  named: [],
};

const page = (name: string, ...files: readonly string[]) =>
  `<html>${files.map((file) => `<script src="${file}"></script>`).join('')}<script>{"b":"${name}"}</script></html>`;

const answer = (type: string, text = '', status = 200) =>
  new Response(text, { status, headers: { 'Content-Type': type } });

const isPageOf = (text: string) =>
  isAnswerOf(build, 'https://pressminute.example/', answer('text/html; charset=utf-8', text));

const isFileOf = (file: Response) =>
  isAnswerOf(build, 'https://pressminute.example/_next/static/chunks/a.js', file);

describe('a page that is to be kept', () => {
  it('is of the build when it says so and asks for files of it alone', async () => {
    expect(await isPageOf(page('build-one', '/_next/static/chunks/a.js', '/_next/static/chunks/b.css'))).toBe(
      true,
    );
    expect(await isPageOf(page('build-one', '/_next/static/chunks/a.js?dpl=build-one'))).toBe(true);
  });

  it('is not when it asks for a file that the build has not', async () => {
    expect(await isPageOf(page('build-one', '/_next/static/chunks/a.js', '/_next/static/chunks/c.js'))).toBe(
      false,
    );
  });

  it('is not when another build sent it with the same files', async () => {
    expect(await isPageOf(page('build-two', '/_next/static/chunks/a.js'))).toBe(false);
  });

  it('is not when it is somebody else’s page that answers to every address', async () => {
    expect(await isPageOf('<html>Sign in to the café’s network, build-one</html>')).toBe(false);
  });

  it('is not when it is no page at all', async () => {
    const text = page('build-one', '/_next/static/chunks/a.js');
    expect(await isAnswerOf(build, 'https://pressminute.example/', answer('application/json', text))).toBe(
      false,
    );
  });
});

describe('a file that is to be kept', () => {
  it('is taken as it comes', async () => {
    expect(await isFileOf(answer('application/javascript; charset=UTF-8', 'a()'))).toBe(true);
  });

  it('is not when the server refuses it, or sends a page in its place', async () => {
    expect(await isFileOf(answer('application/javascript', 'a()', 503))).toBe(false);
    expect(await isFileOf(answer('application/javascript', 'a', 203))).toBe(false);
    expect(await isFileOf(answer('text/html', '<h1>Sign in</h1>'))).toBe(false);
  });

  it('is not when it is the answer of another address', async () => {
    const redirected = answer('application/javascript', 'a()');
    Object.defineProperty(redirected, 'redirected', { value: true });
    expect(await isFileOf(redirected)).toBe(false);
  });
});
