import type { Page } from 'playwright-core';

/** The lowest contrast of any words in the count or at the press, worked out from what the browser draws. */
export const lowestContrast = (page: Page): Promise<{ readonly ratio: number; readonly words: string }> =>
  page.locator('[data-stall-count], [data-press]').evaluate((room) => {
    const canvas = document.createElement('canvas').getContext('2d');
    if (canvas === null) throw new Error('no canvas');
    const rgb = (colour: string) => {
      canvas.clearRect(0, 0, 1, 1);
      canvas.fillStyle = colour;
      canvas.fillRect(0, 0, 1, 1);
      return [...canvas.getImageData(0, 0, 1, 1).data];
    };
    const light = (colour: readonly number[]) => {
      const [r = 0, g = 0, b = 0] = colour.slice(0, 3).map((part) => {
        const share = part / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const groundOf = (element: Element | null): readonly number[] => {
      if (element === null) return rgb(getComputedStyle(document.documentElement).backgroundColor);
      const ground = rgb(getComputedStyle(element).backgroundColor);
      return (ground[3] ?? 0) === 255 ? ground : groundOf(element.parentElement);
    };
    const worst = { ratio: 21, words: '' };
    const texts = document.createTreeWalker(room, NodeFilter.SHOW_TEXT);
    for (let text = texts.nextNode(); text !== null; text = texts.nextNode()) {
      const element = text.parentElement;
      if (element === null || text.textContent?.trim() === '' || !element.checkVisibility()) continue;
      const [one = 0, other = 0] = [
        light(rgb(getComputedStyle(element).color)),
        light(groundOf(element)),
      ].toSorted((a, b) => b - a);
      const ratio = (one + 0.05) / (other + 0.05);
      if (ratio < worst.ratio) Object.assign(worst, { ratio, words: text.textContent });
    }
    return worst;
  });
