/** What the service worker of one build keeps. Written into its script when the app is built. */
export interface KeptBuild {
  /** The framework's name for the build; every page it sends holds it. */
  readonly build: string;
  /** Pages, by where each is a page of its own. */
  readonly pages: readonly string[];
  /** Files named by their content: scripts, styles, fonts. */
  readonly files: readonly string[];
  /** Files that keep their name when their content changes, each with a mark of its content. */
  readonly named: readonly Readonly<{ url: string; revision: string }>[];
}

const BUILT = /\/_next\/static\/[\w./~@-]+\.(?:js|css|woff2)/g;

/**
 * Whether a page comes from a build: it says so, and asks for no file that the build has not. The next version may be
 * going out while the files are fetched, and a sign-in page of a café answers to every address.
 */
export function isPageOf({ build, files }: KeptBuild, page: string): boolean {
  const known = new Set(files);
  const wanted = page.match(BUILT) ?? [];
  return wanted.length > 0 && page.includes(build) && wanted.every((file) => known.has(file));
}
