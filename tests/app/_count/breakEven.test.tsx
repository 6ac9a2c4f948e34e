// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import './countStage';
import { screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import { eventually } from '@/tests/tools/eventually';
import { enterCount, fixPlan, key, tile } from './inCount';

/** What the head says of the marks: in words, and how long what is earned is, with where each mark stands and where the line to its name begins. */
const told = () => {
  const bar = screen.getByLabelText(/sold\./);
  const rects = [...bar.querySelectorAll('rect')].map((rect) => rect.getAttribute('width'));
  const marks = [...bar.querySelectorAll('line')].map((line) => line.getAttribute('x1'));
  expect(marks.slice(3)).toEqual(marks.slice(0, 3));
  return { words: bar.getAttribute('aria-label'), earned: rects[1], marks: marks.slice(0, 3) };
};
const toGo = (words: RegExp) => expect(screen.getByText(words)).toBeVisible();

it('tells each mark before it, at it and behind it, and takes it back with the sale', async () => {
  // A share of a piece is a whole one more: two, three and four.
  await fixPlan({ breakEven: { cash: 1.2, withPay: 3, everything: 3.01, withWriteDown: null } });
  await enterCount();
  const fernL = tile(/^Fern L,/);
  const sell = () => userEvent.click(fernL);
  const undo = key(/^Undo/);
  toGo(/to go until the day’s costs are back/);
  await sell();
  // The last mark is four, and the bar 4.48 long: 1, 2, 3 and 4 of it.
  expect(told()).toEqual({
    words: '1 sold. 2 cash back; 3 pay; 4 all.',
    ...{ earned: '22.321%', marks: ['44.643%', '66.964%', '89.286%'] },
  });
  expect(screen.getByText(/to go until the day’s costs are back/)).toHaveTextContent('1 to go');
  await sell();
  expect(told()).toMatchObject({ words: '2 sold. 2 cash back, reached; 3 pay; 4 all.', earned: '44.643%' });
  expect(screen.getByText(/to go until your pay is earned/)).toHaveTextContent('1 to go');
  await sell();
  expect(told().words).toBe('3 sold. 2 cash back, reached; 3 pay, reached; 4 all.');
  toGo(/to go until all is paid/);
  await sell();
  expect(told().words).toBe('4 sold. 2 cash back, reached; 3 pay, reached; 4 all, reached.');
  toGo(/^all earned$/);
  await sell();
  // Five are more than 4.48, so they are the whole bar.
  expect(told()).toEqual({
    words: '5 sold. 2 cash back, reached; 3 pay, reached; 4 all, reached.',
    ...{ earned: '100.000%', marks: ['40.000%', '60.000%', '80.000%'] },
  });
  for (let back = 0; back < 4; back += 1) await userEvent.click(undo);
  expect(told().words).toBe('1 sold. 2 cash back; 3 pay; 4 all.');
  toGo(/to go until the day’s costs are back/);
  await eventually(() => expect(screen.getByText(/^no signal needed · kept/)).toBeVisible());
});

it('says that there is no number where no piece earns anything', async () => {
  await fixPlan({ breakEven: null });
  await enterCount();
  expect(screen.queryByRole('img', { name: /sold\./ })).toBeNull();
  expect(
    screen.getByText('The plan names no number of pieces at which the day pays for itself.'),
  ).toBeVisible();
});
