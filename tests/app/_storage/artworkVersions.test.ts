import { describe, expect, it } from 'vitest';
import { documentRegistry } from '@/app/_storage/documentRegistry';
import { readDocument } from '@/lib/stored/readDocument';
import savedOne from './savedArtwork1.json';

describe('an artwork kept by an earlier version of the app', () => {
  it('is read, with everything in it and no picture', () => {
    const reading = readDocument(savedOne, documentRegistry);
    expect(reading).toMatchObject({
      state: 'readable',
      document: { version: 2, revision: 3, body: { ...savedOne.body, picture: null } },
    });
  });
});
