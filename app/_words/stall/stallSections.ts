/** The sections of a stall day’s plan in the order of the work, each by the id of its element. */
export const stallSections = [
  { id: 'the-day', name: 'The day' },
  { id: 'how-many', name: 'How many' },
  { id: 'weather', name: 'Weather' },
  { id: 'go-or-stay', name: 'Go or stay' },
  { id: 'prices', name: 'Prices' },
  { id: 'making', name: 'Making' },
  { id: 'car', name: 'Car and tin' },
] as const;

/** In the place of what is pressed while there is no plan. */
export const makingWaits = 'What is to be pressed comes with the plan.';

export type StallSectionId = (typeof stallSections)[number]['id'];
