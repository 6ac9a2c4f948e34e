// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, expect, it } from 'vitest';
import { keepsFocus } from '@/app/_controls/keepsFocus';
import { eventually } from '@/tests/tools/eventually';

afterEach(cleanup);

/** Two lists, each with a heading; a line goes once it is pressed, and the second list goes with its last line. */
function Lists() {
  const [left, setLeft] = useState(['one', 'two', 'three']);
  const line = (name: string) =>
    left.includes(name) && (
      <button type="button" onClick={() => setLeft(left.filter((one) => one !== name))}>
        {name}
      </button>
    );
  return (
    <div ref={keepsFocus}>
      <h2>All lists</h2>
      <section>
        <h2>First list</h2>
        {line('one')}
        {line('two')}
      </section>
      {left.includes('three') && (
        <section>
          <h2>Second list</h2>
          {line('three')}
        </section>
      )}
    </div>
  );
}

const press = (name: string) => userEvent.click(screen.getByRole('button', { name }));
const heading = (name: string) => screen.getByRole('heading', { name });

it('has the focus at the heading of the section in which what held it went', async () => {
  render(<Lists />);
  await press('two');
  await eventually(() => expect(heading('First list')).toHaveFocus());
  await userEvent.tab();
  expect(screen.getByRole('button', { name: 'one' })).toHaveFocus();
});

it('has it at the first heading of the part where the whole section went', async () => {
  render(<Lists />);
  await press('three');
  await eventually(() => expect(heading('All lists')).toHaveFocus());
});

it('leaves it where it is when something else goes', async () => {
  render(<Lists />);
  await userEvent.tab();
  fireEvent.click(screen.getByRole('button', { name: 'three' }));
  await eventually(() => expect(screen.queryByRole('heading', { name: 'Second list' })).toBeNull());
  expect(screen.getByRole('button', { name: 'one' })).toHaveFocus();
});
