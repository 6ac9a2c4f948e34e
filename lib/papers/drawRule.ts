import { rgb } from '@cantoo/pdf-lib';
import type { Lettering } from '@/lib/lettering/openLettering';
import { POINTS_PER_MM } from '@/shared/units';
import type { Flow } from './flowPages';

const INK = rgb(0, 0, 0);
const RULE_MM = 100;

/** A line whose ends are 100 mm apart, a tick at every 10, to find out whether a printer scaled the page. */
export function drawRule(flow: Flow, x: number, lettering: Lettering): void {
  const y = flow.y - 24;
  const line = (from: number, to: number, high: number, thickness: number) =>
    flow.page.drawLine({ start: { x: from, y }, end: { x: to, y: y + high }, thickness, color: INK });
  line(x, x + RULE_MM * POINTS_PER_MM, 0, 1);
  for (let mm = 0; mm <= RULE_MM; mm += 10) {
    const at = x + mm * POINTS_PER_MM;
    const isNamed = mm % 50 === 0;
    line(at, at, isNamed ? 10 : 6, 0.6);
    const words = mm === RULE_MM ? `${mm} mm` : String(mm);
    if (isNamed)
      lettering.drawLine(flow.page, words, {
        x: at - 30,
        y: y + 12.5,
        size: 8.5,
        widthPt: 60,
        align: 'centre',
      });
  }
  flow.goTo(y - 4);
}
