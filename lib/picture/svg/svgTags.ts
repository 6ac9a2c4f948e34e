import { plainLetters } from './plainLetters';

/** One element of a drawing, as far as it tells how much there is to draw. */
export interface SvgTag {
  /** Without its prefix. */
  readonly name: string;
  /** Place of the element around it in the list; −1 for the root. */
  readonly parent: number;
  readonly attributes: ReadonlyMap<string, string>;
  /** Letters of text right inside it. */
  letters: number;
}

export interface SvgTags {
  readonly tags: readonly SvgTag[];
  /** Everything in style elements, one after the other. */
  readonly styles: string;
  /** False where there are more elements than were asked for: the rest is not read. */
  readonly isWhole: boolean;
}

const NAME = /[^\s/>"'=]+/y;
/** Each begins where the one before ended, so that no letter is looked at twice. */
const BETWEEN = /[\s/"'=<>]*/y;
const ATTRIBUTE = /([^\s"'=/<>]+)\s*(?:=\s*(?:"([^"]*)"|'([^']*)'))?/y;

/**
 * The elements of a drawing in the order they begin, in one pass.
 *
 * @param text with comments taken out
 * @param most elements to read
 */
export function svgTags(text: string, most: number): SvgTags {
  const tags: SvgTag[] = [];
  const open: number[] = [];
  const styles: string[] = [];
  let at = text.indexOf('<');
  const take = (letters: string) => {
    const around = tags[open.at(-1) ?? -1];
    if (around === undefined) return;
    if (around.name === 'style') styles.push(plainLetters(letters));
    else around.letters += letters.length;
  };
  while (at !== -1) {
    const end = pieceEnd(text, at);
    // What is never closed is no XML, and no browser draws it.
    if (end === -1) break;
    const sign = text.charAt(at + 1);
    if (text.startsWith(DATA, at)) {
      take(text.slice(at + DATA.length, end - DATA_END.length));
    } else if (sign === '/') {
      open.pop();
    } else if (sign !== '!' && sign !== '?') {
      if (tags.length === most) return { tags, styles: styles.join('\n'), isWhole: false };
      NAME.lastIndex = at + 1;
      const name = NAME.exec(text)?.[0] ?? '';
      const inside = text.slice(at + 1 + name.length, end - 1);
      tags.push({
        name: local(name),
        parent: open.at(-1) ?? -1,
        attributes: attributesOf(inside),
        letters: 0,
      });
      if (!inside.endsWith('/')) open.push(tags.length - 1);
    }
    const next = text.indexOf('<', end);
    if (next > end) take(text.slice(end, next));
    at = next;
  }
  return { tags, styles: styles.join('\n'), isWhole: true };
}

const DATA = '<![CDATA[';
const DATA_END = ']]>';

/** @returns where the piece that begins at a bracket is over; −1 where it never is. */
function pieceEnd(text: string, from: number): number {
  if (text.startsWith(DATA, from)) return behind(text, DATA_END, from);
  if (text.startsWith('<?', from)) return behind(text, '?>', from);
  if (text.startsWith('<!', from)) return behind(text, '>', from);
  for (let at = from + 1; at < text.length; at += 1) {
    const letter = text.charAt(at);
    if (letter === '>') return at + 1;
    if (letter === '"' || letter === "'") {
      at = text.indexOf(letter, at + 1);
      if (at === -1) return -1;
    }
  }
  return -1;
}

function behind(text: string, end: string, from: number): number {
  const at = text.indexOf(end, from);
  return at === -1 ? -1 : at + end.length;
}

function attributesOf(text: string): ReadonlyMap<string, string> {
  const attributes = new Map<string, string>();
  BETWEEN.lastIndex = 0;
  BETWEEN.exec(text);
  ATTRIBUTE.lastIndex = BETWEEN.lastIndex;
  for (let match = ATTRIBUTE.exec(text); match !== null; match = ATTRIBUTE.exec(text)) {
    const [, name = '', double, single] = match;
    const value = double ?? single;
    if (value !== undefined) {
      const isWritten = value.includes('&') || value.includes('\\');
      attributes.set(local(name), isWritten ? plainLetters(unnamed(value)) : value);
    }
    BETWEEN.lastIndex = ATTRIBUTE.lastIndex;
    BETWEEN.exec(text);
    ATTRIBUTE.lastIndex = BETWEEN.lastIndex;
  }
  return attributes;
}

/** The five names that XML knows without being told. */
const unnamed = (value: string): string =>
  value.replace(/&(quot|apos|lt|gt|amp);/g, (_, name: string) => NAMED[name] ?? '');
const NAMED: Readonly<Record<string, string>> = { quot: '"', apos: "'", lt: '<', gt: '>', amp: '&' };

const local = (name: string): string => name.slice(name.indexOf(':') + 1);
