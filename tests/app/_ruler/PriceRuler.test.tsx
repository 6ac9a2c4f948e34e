// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { renderToString } from 'react-dom/server';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { PriceRuler } from '@/app/_ruler/PriceRuler';

afterEach(cleanup);

const marks = [
  { id: 'outOfPocket', label: 'out of pocket', value: 6.58 },
  { id: 'fullCost', label: 'full cost', value: 11.13 },
  { id: 'target', label: 'target 30 %', value: 16.27 },
];

function ruler(onMove: (value: number) => void, more: { value?: number; onRest?: () => void } = {}) {
  return (
    <PriceRuler
      label="Price of a shirt"
      marks={marks}
      flag={{ value: more.value ?? 19, onMove, onRest: more.onRest }}
      bounds={{ min: 0, max: 24 }}
      step={0.05}
      meaning="margin 40.5 %"
      format={(value) => value.toFixed(2)}
      payToWorkBelow={6.58}
    />
  );
}

describe('PriceRuler by keyboard', () => {
  it.each([
    ['ArrowRight', false, 19.05],
    ['ArrowUp', false, 19.05],
    ['ArrowLeft', false, 18.95],
    ['ArrowDown', false, 18.95],
    ['ArrowRight', true, 19.5],
    ['ArrowLeft', true, 18.5],
    ['PageUp', false, 19.5],
    ['PageDown', false, 18.5],
    ['Home', false, 0],
    ['End', false, 24],
  ])('%s (shift %s) takes the flag from 19 to %d', (key, shiftKey, to) => {
    const onMove = vi.fn();
    render(ruler(onMove));
    fireEvent.keyDown(screen.getByRole('slider'), { key, shiftKey });
    expect(onMove).toHaveBeenCalledExactlyOnceWith(to);
  });

  it('tells that the flag rests when the key is let go, and nothing for a Tab', () => {
    const onRest = vi.fn();
    render(ruler(() => {}, { onRest }));
    fireEvent.keyUp(screen.getByRole('slider'), { key: 'Tab' });
    expect(onRest).not.toHaveBeenCalled();
    fireEvent.keyUp(screen.getByRole('slider'), { key: 'ArrowRight' });
    expect(onRest).toHaveBeenCalledTimes(1);
  });

  it('stops at the end, and leaves other keys and shortcuts alone', () => {
    const onMove = vi.fn();
    render(ruler(onMove, { value: 24 }));
    const slider = screen.getByRole('slider');
    fireEvent.keyDown(slider, { key: 'ArrowRight' });
    fireEvent.keyDown(slider, { key: 'a' });
    fireEvent.keyDown(slider, { key: 'ArrowLeft', altKey: true });
    expect(onMove).not.toHaveBeenCalled();
  });
});

describe('PriceRuler for a screen reader', () => {
  it('is a slider that says the price and what it means in words', () => {
    render(ruler(() => {}));
    const slider = screen.getByRole('slider', { name: 'Price of a shirt' });
    expect(slider).toHaveAttribute('aria-valuenow', '19');
    expect(slider).toHaveAttribute('aria-valuemin', '0');
    expect(slider).toHaveAttribute('aria-valuemax', '24');
    expect(slider).toHaveAttribute('aria-valuetext', '19.00, margin 40.5 %');
    expect(slider).toHaveAccessibleDescription(
      'out of pocket 6.58; full cost 11.13; target 30 % 16.27; below 6.58 you pay to work',
    );
  });

  it('keeps its value within its range when the price lies beyond the bar', () => {
    render(ruler(() => {}, { value: 30 }));
    expect(screen.getByRole('slider')).toHaveAttribute('aria-valuemax', '30');
  });
});

/** Nothing changes its size here. */
class StillObserver {
  observe() {}
  disconnect() {}
}

describe('PriceRuler where its names find no room', () => {
  const wide = (px: number) => {
    vi.stubGlobal('ResizeObserver', StillObserver);
    HTMLDivElement.prototype.getBoundingClientRect = () => new DOMRect(0, 0, px, 100);
  };
  afterEach(() => {
    Reflect.deleteProperty(HTMLDivElement.prototype, 'getBoundingClientRect');
    vi.unstubAllGlobals();
    document.documentElement.style.fontSize = '';
  });

  it('shows the figure of every mark, and tells the name of the one that is touched', async () => {
    wide(200);
    render(ruler(() => {}));
    expect(screen.getAllByRole('button').map((button) => button.textContent)).toEqual([
      '6.58',
      '11.13',
      '16.27',
    ]);
    expect(screen.getByText('target 30 % 16.27', { selector: '[aria-hidden]' })).toBeVisible();
    fireEvent.click(screen.getByRole('button', { name: 'full cost 11.13' }));
    expect(screen.getByText('full cost 11.13', { selector: '[aria-hidden]' })).toBeVisible();
    expect(screen.getByRole('button', { pressed: true })).toHaveAccessibleName('full cost 11.13');
  });

  it('tells a mark that takes the focus, so that keys reach it, too', () => {
    wide(200);
    render(ruler(() => {}));
    fireEvent.focus(screen.getByRole('button', { name: 'out of pocket 6.58' }));
    expect(screen.getByText('out of pocket 6.58', { selector: '[aria-hidden]' })).toBeVisible();
  });

  it('sets figures and names under their ticks where there is room, and in rows at twice the type on a phone', () => {
    wide(640);
    const { unmount } = render(ruler(() => {}));
    expect(screen.queryByRole('button')).toBeNull();
    expect(screen.getByText('full cost', { selector: 'text' })).toBeVisible();
    unmount();
    document.documentElement.style.fontSize = '32px';
    wide(160);
    render(ruler(() => {}));
    expect(screen.queryByRole('button')).toBeNull();
    expect(screen.getByText('full cost', { selector: 'dt' })).toBeVisible();
  });
});

describe('PriceRuler by pointer, on a bar 240 px wide', () => {
  function hold(onMove: (value: number) => void, onRest = () => {}) {
    render(ruler(onMove, { value: 12, onRest }));
    const slider = screen.getByRole('slider');
    slider.getBoundingClientRect = () => new DOMRect(0, 0, 240, 58);
    slider.setPointerCapture = () => {};
    return slider;
  }
  const at = (clientX: number, pointerType = 'mouse') => ({ clientX, pointerId: 1, button: 0, pointerType });

  it('drags the flag by the spot where it was taken, a step at a time, and tells when it is let go', () => {
    const onMove = vi.fn();
    const onRest = vi.fn();
    const slider = hold(onMove, onRest);
    fireEvent.pointerDown(slider, at(125));
    expect(onMove).not.toHaveBeenCalled();
    fireEvent.pointerMove(slider, at(145.2));
    expect(onMove).toHaveBeenLastCalledWith(14);
    fireEvent.pointerUp(slider, at(145.2));
    expect(onRest).toHaveBeenCalledTimes(1);
    fireEvent.pointerMove(slider, at(200));
    expect(onMove).toHaveBeenCalledTimes(1);
  });

  it('goes where the mouse presses, but not where a finger only scrolls', () => {
    const onMove = vi.fn();
    const slider = hold(onMove);
    fireEvent.pointerDown(slider, at(20, 'touch'));
    expect(onMove).not.toHaveBeenCalled();
    fireEvent.pointerDown(slider, at(20));
    expect(onMove).toHaveBeenCalledExactlyOnceWith(2);
  });

  it('stays on the bar when the pointer leaves it', () => {
    const onMove = vi.fn();
    const slider = hold(onMove);
    fireEvent.pointerDown(slider, at(120));
    fireEvent.pointerMove(slider, at(-500));
    expect(onMove).toHaveBeenLastCalledWith(0);
  });
});

it('PriceRuler comes from the server without a style attribute, which the content policy would refuse', () => {
  expect(renderToString(ruler(() => {}))).not.toMatch(/\sstyle=/);
});

describe('PriceRuler by hand', () => {
  const bar = (widthPx: number) => {
    const slider = screen.getByRole('slider');
    slider.getBoundingClientRect = () => new DOMRect(0, 0, widthPx, 58);
    slider.setPointerCapture = () => undefined;
    return slider;
  };
  const at = (clientX: number) => ({ clientX, pointerId: 1, pointerType: 'touch', button: 0 });

  it('takes the flag by the plate with its price, where that hangs to one side at the end of the bar', () => {
    const onMove = vi.fn();
    render(ruler(onMove, { value: 24 }));
    const slider = bar(640);
    // The point stands at 640; the plate of five signs is 63 px wide and ends there, so that 590 lies on it.
    fireEvent.pointerDown(slider, at(590));
    fireEvent.pointerMove(slider, at(590 - 64));
    // 64 of 640 px are 2.40 of 24.
    expect(onMove).toHaveBeenCalledExactlyOnceWith(21.6);
  });

  it('leaves a finger alone that lands beside plate and flag: it scrolls', () => {
    const onMove = vi.fn();
    render(ruler(onMove, { value: 24 }));
    const slider = bar(640);
    fireEvent.pointerDown(slider, at(560));
    fireEvent.pointerMove(slider, at(500));
    expect(onMove).not.toHaveBeenCalled();
  });
});
