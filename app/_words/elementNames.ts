import type { WorkElement } from '@/shared/schemas/making/runEvents';

/** What somebody was doing, wherever time is told by it. */
export const elementNames: Readonly<Record<WorkElement, string>> = {
  enquiry: 'Enquiries and messages',
  art: 'Artwork',
  proof: 'Proofs',
  setUp: 'Setting up',
  sheets: 'Printing sheets',
  presses: 'Pressing',
  finish: 'Finishing',
  pack: 'Packing',
  cleanDown: 'Cleaning up',
  deliver: 'Delivering',
  buying: 'Buying',
  selling: 'Selling',
  office: 'Office and books',
  rest: 'All the rest together',
  other: 'Something else',
};

/** @returns what an element of work is called; one from a later build is called as it is kept. */
export const elementName = (element: string): string =>
  Object.hasOwn(elementNames, element) ? elementNames[element as WorkElement] : element;
