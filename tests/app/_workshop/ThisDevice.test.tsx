// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { deviceName } from '@/app/_copies/deviceName';
import { ThisDevice } from '@/app/_workshop/ThisDevice';

beforeEach(() => localStorage.clear());
afterEach(cleanup);

const noon = (month: number, day: number) => new Date(2026, month - 1, day, 12).getTime();

describe('ThisDevice', () => {
  it('says how papers are numbered here, and what to do where two devices share a letter', () => {
    render(<ThisDevice letter="K" clockBehind={null} />);
    // Which number comes next is told by each list: after a copy was brought back it is no longer the first.
    expect(screen.getByText('Papers numbered here end in the letter K.')).toBeVisible();
    expect(screen.getByText(/two of your devices show the same letter/)).toHaveTextContent(
      /takes a free letter for its next numbers/,
    );
    expect(screen.queryByText(/set the clock/)).toBeNull();
  });

  it('has no letter before anything was numbered', () => {
    render(<ThisDevice letter={null} clockBehind={null} />);
    expect(screen.getByText(/^Nothing was numbered here yet\./)).toBeVisible();
  });

  it('keeps a name for the device, on the device alone', async () => {
    render(<ThisDevice letter="K" clockBehind={null} />);
    await userEvent.type(screen.getByLabelText('Name of this device'), 'phone');
    await userEvent.tab();
    expect(deviceName.recall()).toBe('phone');
  });

  it('says where the browser keeps no name', async () => {
    render(<ThisDevice letter="K" clockBehind={null} />);
    const refusing = vi.spyOn(Storage.prototype, 'setItem').mockImplementation(() => {
      throw new DOMException('no', 'SecurityError');
    });
    await userEvent.type(screen.getByLabelText('Name of this device'), 'p');
    await userEvent.tab();
    expect(screen.getByText(/^This browser keeps no name/)).toBeVisible();
    refusing.mockRestore();
  });

  it('says where the clock stands before what was noted', () => {
    render(<ThisDevice letter="K" clockBehind={{ deviceClock: noon(11, 3), lastEntry: noon(11, 26) }} />);
    expect(
      screen.getByText(
        /^The clock of this device says Nov 3, 2026, but something was noted here on Nov 26, 2026: set the clock\./,
      ),
    ).toBeVisible();
  });
});
