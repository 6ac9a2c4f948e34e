/** What a page has noted of itself since it was opened; times in ms since then. */
export interface PageNotes {
  readonly firstPaint: number | null;
  readonly largestPaint: number | null;
  /** What was painted largest: its text's beginning. */
  readonly largest: string;
  /** When the job's price and what it pays stood there and could be seen. */
  readonly price: number | null;
  /** Share of the screen times way, of what moved unasked. */
  readonly shift: number;
  /** Tasks of the page's own thread over 50 ms. */
  readonly longTasks: readonly number[];
  /** Frames over 50 ms: how long, and whose script took longest in them. */
  readonly slowFrames: readonly { readonly ms: number; readonly script: string }[];
  /** The slowest answer to a press or a key; null where none was slow enough to be told (16 ms). */
  readonly interaction: number | null;
  /** When something last changed on it, or kept it busy. */
  readonly lastStir: number;
}

/** Runs in the page before anything else and notes what a visitor waits for. Refers to nothing outside of itself. */
export function notePage(): void {
  const notes: { -readonly [Name in keyof PageNotes]: PageNotes[Name] } = {
    firstPaint: null,
    largestPaint: null,
    largest: '',
    price: null,
    shift: 0,
    longTasks: [],
    slowFrames: [],
    interaction: null,
    lastStir: 0,
  };
  Reflect.set(globalThis, 'pageNotes', notes);
  const watch = (type: string, each: (entry: PerformanceEntry) => void, more: object = {}) =>
    new PerformanceObserver((list) => list.getEntries().forEach(each)).observe({
      type,
      buffered: true,
      ...more,
    });
  const stir = () => {
    notes.lastStir = performance.now();
  };
  new MutationObserver(stir).observe(document, { childList: true, subtree: true, characterData: true });
  const told = (entry: object, name: string): unknown => Reflect.get(entry, name);

  watch('paint', ({ name, startTime }) => {
    if (name === 'first-contentful-paint') notes.firstPaint = startTime;
  });
  watch('largest-contentful-paint', (entry) => {
    notes.largestPaint = entry.startTime;
    const element = told(entry, 'element');
    notes.largest = element instanceof Element ? (element.textContent ?? '').trim().slice(0, 40) : '';
  });
  watch('layout-shift', (entry) => {
    if (told(entry, 'hadRecentInput') !== true) notes.shift += Number(told(entry, 'value'));
  });
  watch('longtask', ({ duration }) => {
    stir();
    notes.longTasks = [...notes.longTasks, Math.round(duration)];
  });
  watch('long-animation-frame', (entry) => {
    const scripts: unknown = told(entry, 'scripts');
    const [longest] = (Array.isArray(scripts) ? scripts : []).sort((a, b) => b.duration - a.duration);
    const script =
      longest === undefined
        ? 'style and layout'
        : `${longest.invoker} ${String(longest.sourceURL).split('/').pop()} ${longest.sourceFunctionName} ${Math.round(longest.duration)} ms`;
    notes.slowFrames = [...notes.slowFrames, { ms: Math.round(entry.duration), script }];
  });
  watch(
    'event',
    (entry) => {
      if (told(entry, 'interactionId') === 0) return;
      notes.interaction = Math.max(notes.interaction ?? 0, entry.duration);
    },
    { durationThreshold: 16 },
  );

  const stands = (name: string) =>
    [...document.querySelectorAll(`[data-figure="${name}"]`)].some(
      (figure) => /\d/.test(figure.textContent ?? '') && figure.checkVisibility({ visibilityProperty: true }),
    );
  const look = () => {
    if (notes.price !== null) return;
    // Seen with the frame it is painted in.
    if (stands('price') && stands('pay')) notes.price = performance.now();
    else requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
}
