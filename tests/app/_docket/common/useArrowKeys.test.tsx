// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it } from 'vitest';
import { useArrowKeys } from '@/app/_docket/common/useArrowKeys';

afterEach(cleanup);

/** Two rows of three figures, one of them without a button; an opened figure over the whole width. */
function Figures({ rows = ['a', 'b'] }: Readonly<{ rows?: readonly string[] }>) {
  const keys = useArrowKeys();
  return (
    <>
      <table {...keys}>
        <tbody>
          {rows.map((row) => (
            <tr key={row}>
              <th scope="row">{row}</th>
              {[1, 2, 3].map((column) => (
                <td key={column}>
                  {row === 'a' && column === 2 ? 'none' : <button type="button">{`${row}${column}`}</button>}
                </td>
              ))}
            </tr>
          ))}
          <tr>
            <td colSpan={4}>
              <button type="button">close</button>
            </td>
          </tr>
        </tbody>
      </table>
      <button type="button">after</button>
    </>
  );
}

const focused = () => document.activeElement?.textContent;

describe('a table of figures', () => {
  it('is one stop of the Tab key, and what is opened in it keeps its own', async () => {
    render(<Figures />);
    const stops: (string | null | undefined)[] = [];
    for (let at = 0; at < 4; at += 1) {
      await userEvent.tab();
      stops.push(focused());
    }
    expect(stops.slice(0, 3)).toEqual(['a1', 'close', 'after']);
  });

  it.each([
    ['{ArrowRight}', 'a3'],
    ['{ArrowDown}', 'b1'],
    ['{End}', 'a3'],
    ['{ArrowRight}{ArrowDown}{Home}', 'b1'],
    ['{ArrowDown}{ArrowRight}', 'b2'],
    ['{ArrowDown}{ArrowRight}{ArrowUp}', 'b2'],
    ['{ArrowLeft}', 'a1'],
    ['{ArrowDown}{ArrowDown}', 'b1'],
  ])('goes by %s from its first figure to %s', async (keys, to) => {
    render(<Figures />);
    await userEvent.tab();
    await userEvent.keyboard(keys);
    expect(focused()).toBe(to);
  });

  it('is entered again where it was left', async () => {
    render(<Figures />);
    await userEvent.tab();
    await userEvent.keyboard('{ArrowDown}{ArrowRight}');
    await userEvent.tab();
    await userEvent.tab({ shift: true });
    expect(focused()).toBe('b2');
  });

  it('has a stop again when the figure that was it is gone', async () => {
    const { rerender } = render(<Figures />);
    await userEvent.tab();
    await userEvent.keyboard('{ArrowDown}');
    rerender(<Figures rows={['a']} />);
    expect(screen.getByRole('button', { name: 'a1' })).toHaveAttribute('tabindex', '0');
  });
});
