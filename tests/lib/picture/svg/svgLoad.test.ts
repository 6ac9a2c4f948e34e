import { describe, expect, it, test } from 'vitest';
import { inspectPicture } from '@/lib/picture/inspectPicture';
import { inDeclarations } from '@/lib/picture/svg/svgReferences';
import { textBytes } from '@/tests/fixtures/pictures/fileBytes';

const svg = (inside: string) => `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9">${inside}</svg>`;
const inspect = (inside: string) => inspectPicture(textBytes(svg(inside)));
const tooMuch = (inside: string) => {
  const outcome = inspect(inside);
  return !outcome.ok && outcome.problem.kind === 'svgTooMuch' ? outcome.problem.load : null;
};

const DOT = '<path id="g0" d="M0 0h1v1z"/>';
/** Groups of which each draws the one before so many times. */
const nested = (times: number, levels: number, one = (id: string) => `<use href="#${id}"/>`) =>
  Array.from(
    { length: levels },
    (_, level) => `<g id="g${level + 1}">${one(`g${level}`).repeat(times)}</g>`,
  ).join('');

describe('a drawing that draws its own parts again and again', () => {
  it('is refused by the count of copies, however small its file is', () => {
    // 12 × 12 × 12 × 12 × 12 = 248,832 copies of the one dot.
    const text = `<defs>${DOT}${nested(12, 5)}</defs><use href="#g5"/>`;
    expect(svg(text).length).toBeLessThan(1_500);
    expect(tooMuch(text)).toEqual({ what: 'copies', count: 248_831, most: 20_000 });
  });

  test.each([
    ['by the old name of references', (id: string) => `<use xlink:href="#${id}"/>`],
    ['with the sign as a number', (id: string) => `<use href="&#35;${id}"/>`],
    ['with a prefix', (id: string) => `<s:use href="#${id}"/>`],
  ])('is refused %s', (_, one) => {
    expect(tooMuch(`<defs>${DOT}${nested(20, 4, one)}</defs><use href="#g4"/>`)).toMatchObject({
      what: 'copies',
    });
  });

  // Forty dots, forty times in each of three: 64,000 of 40 written and 3 × 40 rectangles that bear them.
  const chain = (level: (id: string, inside: string) => string, use: (id: string) => string) => {
    const rects = (id: string) => `<rect width="9" height="9" ${use(id)}/>`.repeat(40);
    return [
      level('c0', '<path d="M0 0h1"/>'.repeat(40)),
      level('c1', rects('c0')),
      level('c2', rects('c1')),
      rects('c2'),
    ].join('');
  };
  test.each([
    [
      'patterns',
      chain(
        (id, inside) => `<pattern id="${id}">${inside}</pattern>`,
        (id) => `fill="url(#${id})"`,
      ),
    ],
    [
      'masks',
      chain(
        (id, inside) => `<mask id="${id}">${inside}</mask>`,
        (id) => `mask="url('#${id}')"`,
      ),
    ],
    [
      'clips',
      chain(
        (id, inside) => `<clipPath id="${id}">${inside}</clipPath>`,
        (id) => `clip-path="url(#${id})"`,
      ),
    ],
    [
      'styles',
      chain(
        (id, inside) => `<pattern id="${id}">${inside}</pattern>`,
        (id) => `style="fill:url(&quot;#${id}&quot;)"`,
      ),
    ],
    [
      'rules of style',
      `<style>@media all{.c0,.no{fill:url(#c0)}} rect.c1{fill:url(#c1)} g > .c2{fill:url(#c2)}</style>${chain(
        (id, inside) => `<pattern id="${id}">${inside}</pattern>`,
        (id) => `class="so ${id}"`,
      )}`,
    ],
    [
      'rules in character data',
      `<style><![CDATA[rect{fill:url(#c0)}]]></style><pattern id="c0">${'<path d="M0 0"/>'.repeat(200)}</pattern>${'<rect/>'.repeat(150)}`,
    ],
  ])('is refused in chains of %s', (_, text) => {
    expect(tooMuch(text)).toMatchObject({ what: 'copies' });
  });

  it('counts a marker at every point, where it is handed down too', () => {
    const marker = `<marker id="m">${'<path d="M0 0h1"/>'.repeat(10)}</marker>`;
    const line = `<path d="M0 0${'l1 1-1-1'.repeat(1_200)}"/>`;
    // 2,401 points, ten shapes at each, of which ten are written; the path itself counts as 25 both times.
    expect(tooMuch(`${marker}<g marker-mid="url(#m)">${line}</g>`)).toEqual({
      what: 'copies',
      count: 24_000,
      most: 20_000,
    });
  });

  it('that holds itself is refused by the name of what does, for no count is right', () => {
    const all = ['a', 'b', 'c', 'd'];
    const text = all.map(
      (id) => `<g id="${id}">${all.map((other) => `<use href="#${other}"/>`).join('')}</g>`,
    );
    expect(tooMuch(text.join(''))).toEqual({ what: 'loop', name: 'a' });
  });

  it('of masks, steps of filters and sheer groups is refused by their count', () => {
    const filter = '<filter id="f"><feGaussianBlur stdDeviation="3"/><feOffset dx="1"/></filter>';
    const rect = '<rect width="9" height="9" filter="url(#f)"/>';
    expect(tooMuch(filter + rect.repeat(100))).toBe(null);
    expect(tooMuch(filter + rect.repeat(101))).toEqual({ what: 'effects', count: 202, most: 200 });
    expect(tooMuch(`${'<g opacity=".9">'.repeat(201)}${rect}${'</g>'.repeat(201)}`)).toMatchObject({
      what: 'effects',
      count: 201,
    });
    const noise = '<filter id="f"><feTurbulence numOctaves="5000"/></filter>';
    expect(tooMuch(noise + rect)).toMatchObject({ what: 'effects', count: 501 });
  });
});

describe('a drawing is taken', () => {
  test.each([
    ['with sixty thousand shapes of its own', '<path d="M0 0h1"/>'.repeat(60_000)],
    [
      'that is written as a part and drawn once',
      `<defs><g id="a">${DOT.repeat(30_000)}</g></defs><use href="#a"/>`,
    ],
    ['with a thousand stars', `<symbol id="s">${DOT.repeat(5)}</symbol>${'<use href="#s"/>'.repeat(1_000)}`],
    [
      'with gradients and clips as drawing programs write them',
      `<style>.a{fill:url(#l)}.b{clip-path:url(#k)}</style><linearGradient id="l"/><clipPath id="k"><rect/></clipPath>${'<g class="b"><path class="a" d="M0 0h1"/></g>'.repeat(5_000)}`,
    ],
    ['with a reference that leads nowhere', '<use href="#gone"/><rect fill="url(#gone)"/>'],
    ['with parts that are never drawn', `<defs>${DOT}${nested(12, 9)}</defs><path d="M0 0h1"/>`],
  ])('%s', (_, inside) => expect(inspect(inside).ok).toBe(true));
});

describe('counting', () => {
  it('takes no time of its own, however the file multiplies', () => {
    // Not by the clock: other work on the machine is not this file’s.
    const start = process.cpuUsage();
    expect(tooMuch(`<defs>${DOT}${nested(50, 200)}</defs><use href="#g200"/>`)).toMatchObject({
      count: 1e12,
    });
    const rules = Array.from({ length: 20_000 }, (_, index) => `.a.b${index}{fill:url(#x)}`).join('');
    expect(tooMuch(`<style>${rules}</style>${'<path class="a"/>'.repeat(20_000)}`)).toMatchObject({
      what: 'elements',
    });
    expect(inspect(`${'<g>'.repeat(300_000)}${'</g>'.repeat(300_000)}`).ok).toBe(true);
    const pieces = [
      'x',
      ' ',
      '<a ',
      '<a x=',
      '=',
      '{',
      '}',
      'url(#',
      '<![CDATA[',
      ']]>',
      '<?',
      '"',
      ',',
      '.a',
      '#',
    ];
    for (const piece of pieces) {
      const much = piece.repeat(1_000_000 / piece.length);
      inspect(much);
      inspect(`<path d="${much.replaceAll('"', '')}" ${much}/>`);
      inspect(`<style>${much}</style>`);
      inspect(`<style>a{b:${much}}</style><a class="${much.replaceAll('"', '')}"/>`);
    }
    expect(process.cpuUsage(start).user / 1e6).toBeLessThan(15);
  });

  it('reads a reference with a long row of blanks in it once', () => {
    // Split in every way, this row would take minutes.
    expect(inDeclarations(`fill: url(${' '.repeat(600_000)}x#a)`)).toEqual([]);
  });

  it('reads the classes of an element once, however many rules they are compared with', () => {
    const classes = Array.from({ length: 20_000 }, (_, index) => `c${index}`).join(' ');
    const rules = Array.from({ length: 20_000 }, (_, index) => `.c1.n${index}`).join(',');
    const outcome = inspect(`<style>${rules}{fill:url(#a)}</style><path d="M0 0h1" class="${classes}"/>`);
    expect(outcome.ok || outcome.problem.kind === 'svgTooMuch').toBe(true);
  });

  it('sees what stands between character data that look like comments', () => {
    const hidden = `<style><![CDATA[<!--]]></style><defs>${DOT}${nested(12, 5)}</defs><use href="#g5"/><style><![CDATA[-->]]></style>`;
    expect(tooMuch(hidden)).toMatchObject({ what: 'copies' });
    const script = '<style><![CDATA[<!--]]></style><script>x</script><style><![CDATA[-->]]></style>';
    expect(inspect(script)).toMatchObject({ problem: { kind: 'svgUnsafe', found: 'script' } });
  });
});

describe('names that stand for other text a billion times over', () => {
  const laughs = Array.from(
    { length: 9 },
    (_, level) => `<!ENTITY l${level + 1} "${`&l${level};`.repeat(10)}">`,
  ).join('');
  test.each([
    ['in the document type', `<!DOCTYPE svg [<!ENTITY l0 "ha">${laughs}]>`],
    ['behind a long name', `<!DOCTYPE svg PUBLIC "${'x'.repeat(2_000)}>" "y" [<!ENTITY l0 "ha">${laughs}]>`],
  ])('are refused unread %s', (_, type) => {
    const text = `${type}${svg('<text>&l9;</text>')}`;
    expect(inspectPicture(textBytes(text)).ok).toBe(false);
  });
});
