/** What a drawing looks like by the styles of the page, and must carry along once it leaves it. */
const carried = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linejoin',
  'paint-order',
  'stroke-opacity',
  'font-size',
  'font-weight',
  'text-anchor',
  'opacity',
] as const;

interface StandaloneSvg {
  readonly text: string;
  readonly width: number;
  readonly height: number;
}

/** Height of a line of words beneath a drawing, and the room around them, px. */
const LINE_PX = 18;
const MARGIN_PX = 10;

/**
 * @param captions lines written beneath, for whoever sees the drawing without the page
 * @returns a drawing of the page as a file of its own, with its colours written in, on the colour of the docket
 */
export function standaloneSvg(drawing: SVGSVGElement, captions: readonly string[]): StandaloneSvg {
  const { width, height: drawn } = drawing.getBoundingClientRect();
  const height = drawn + captions.length * LINE_PX + MARGIN_PX;
  const copy = drawing.cloneNode(true);
  if (!(copy instanceof SVGSVGElement)) throw new Error('the drawing cannot be copied');
  const originals = drawing.querySelectorAll('*');
  copy.querySelectorAll('*').forEach((element, index) => {
    const original = originals[index];
    if (original === undefined) return;
    const look = getComputedStyle(original);
    for (const name of carried) {
      const value = look.getPropertyValue(name);
      if (value !== '') element.setAttribute(name, value);
    }
    element.removeAttribute('class');
    element.removeAttribute('style');
  });
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  copy.setAttribute('width', String(width));
  copy.setAttribute('height', String(height));
  copy.setAttribute('viewBox', `0 0 ${width} ${height}`);
  copy.setAttribute('font-family', 'sans-serif');
  for (const name of ['class', 'style', 'role', 'tabindex', 'aria-label']) copy.removeAttribute(name);
  const ground = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
  ground.setAttribute('width', '100%');
  ground.setAttribute('height', '100%');
  ground.setAttribute('fill', groundOf(drawing));
  copy.prepend(ground);
  captions.forEach((caption, line) => {
    const words = document.createElementNS('http://www.w3.org/2000/svg', 'text');
    words.setAttribute('x', String(MARGIN_PX));
    words.setAttribute('y', String(drawn + (line + 1) * LINE_PX - MARGIN_PX / 2));
    words.setAttribute('font-size', '13');
    words.setAttribute('fill', getComputedStyle(drawing).color);
    words.textContent = caption;
    copy.append(words);
  });
  return { text: new XMLSerializer().serializeToString(copy), width, height };
}

/** The first ground behind a drawing that is not clear. */
function groundOf(element: Element): string {
  for (let at: Element | null = element; at !== null; at = at.parentElement) {
    const colour = getComputedStyle(at).backgroundColor;
    if (colour !== '' && !colour.startsWith('rgba(0, 0, 0, 0') && colour !== 'transparent') return colour;
  }
  return 'white';
}
