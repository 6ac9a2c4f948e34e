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
 * Whether an answer may be kept as what a build has under an address. A refusal, an answer of another address and a page
 * in the place of a script never are: a host that asks people to sign in sends such.
 */
export async function isAnswerOf(kept: KeptBuild, address: string, answer: Response): Promise<boolean> {
  if (answer.status !== 200 || answer.redirected) return false;
  const isPage = answer.headers.get('Content-Type')?.startsWith('text/html') === true;
  const isWanted = kept.pages.includes(new URL(address).pathname);
  if (!isWanted || !isPage) return isWanted === isPage;
  return isPageOf(kept, await answer.clone().text());
}

/**
 * Whether a page comes from a build: it says so, and asks for no file that the build has not. The next version may be
 * going out while the files are fetched, and a sign-in page of a café answers to every address.
 */
function isPageOf({ build, files }: KeptBuild, page: string): boolean {
  const known = new Set(files);
  const wanted = page.match(BUILT) ?? [];
  return wanted.length > 0 && page.includes(build) && wanted.every((file) => known.has(file));
}
