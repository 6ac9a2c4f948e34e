import { strangerScript } from './strangerScript';

/** The one script of our own that stands in a page; it has to run before the first paint. */
export const HideStranger = ({ language }: Readonly<{ language: string }>) => (
  // biome-ignore lint/security/noDangerouslySetInnerHtml: a constant, known to the content policy by its hash
  <script data-language={language} dangerouslySetInnerHTML={{ __html: strangerScript }} />
);
