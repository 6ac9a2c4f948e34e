import { wantPage } from './app/_frame/wantedPage';

/** The framework calls it before it goes to another page, whoever asked for that. */
export function onRouterTransitionStart(url: string): void {
  wantPage(url);
}
