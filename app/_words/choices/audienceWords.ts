import type { Audience } from '@/shared/schemas/job';

/** Crowds, as they stand after "for". */
export const audienceWords: { readonly [Name in Audience]: string } = {
  adults: 'adults',
  women: 'a women’s cut',
  youth: 'children',
};
