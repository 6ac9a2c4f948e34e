/** Numbers that one point of each command takes: SVG 2, section 9.3. */
const NUMBERS: Readonly<Record<string, number>> = { m: 2, l: 2, h: 1, v: 1, c: 6, s: 4, q: 4, t: 2, a: 7 };

/**
 * The points of a path or of a list of points, counted letter by letter in one pass: what a marker is drawn at.
 *
 * @param text the `d` of a path, or `points`, which count as one long line
 */
export function pathPoints(text: string): number {
  let points = 0;
  let perPoint = 2;
  let numbers = 0;
  let inNumber = false;
  let hasDot = false;
  const endCommand = () => {
    points += Math.ceil(numbers / perPoint);
    numbers = 0;
  };
  for (let at = 0; at < text.length; at += 1) {
    const letter = text.charCodeAt(at);
    if (isDigit(letter)) {
      if (!inNumber) {
        numbers += 1;
        hasDot = false;
      }
      inNumber = true;
    } else if (letter === DOT) {
      // A second point begins the next number: "1.5.5" is two.
      if (!inNumber || hasDot) numbers += 1;
      inNumber = true;
      hasDot = true;
    } else if (inNumber && (letter === SMALL_E || letter === LARGE_E)) {
      hasDot = true;
      const sign = text.charCodeAt(at + 1);
      if (sign === PLUS || sign === MINUS) at += 1;
    } else {
      inNumber = false;
      const per = isLetter(letter) ? (NUMBERS[text.charAt(at).toLowerCase()] ?? 2) : null;
      if (per !== null) {
        endCommand();
        perPoint = per;
      }
    }
  }
  endCommand();
  return points;
}

const DOT = 46;
const PLUS = 43;
const MINUS = 45;
const LARGE_E = 69;
const SMALL_E = 101;
const isDigit = (code: number) => code >= 48 && code <= 57;
const isLetter = (code: number) => (code >= 65 && code <= 90) || (code >= 97 && code <= 122);
