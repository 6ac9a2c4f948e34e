import type { TracePart } from '@/lib/grid/traceFigure';

/**
 * Works out the parts of a trace as they are shown: signs, numbers, values of operands and the few functions of
 * the grid. A second reading of the formulas, by plain descent, that the engine has no hand in.
 */
export function evaluateParts(parts: readonly TracePart[]): number {
  const reader = new Reader(parts);
  const value = reader.comparison();
  reader.end();
  return value;
}

const functions: Readonly<Record<string, (...values: readonly number[]) => number>> = {
  IF: (condition, then, otherwise) => (condition === 0 ? (otherwise ?? Number.NaN) : (then ?? Number.NaN)),
  MAX: Math.max,
  // To whole pieces only, which is all the grid asks for; the noise of a division is not a piece.
  ROUNDUP: (value = Number.NaN) => Math.ceil(value - 1e-9),
};

class Reader {
  #at = 0;
  readonly #parts: readonly TracePart[];

  constructor(parts: readonly TracePart[]) {
    this.#parts = parts;
  }

  comparison(): number {
    const left = this.#sum();
    if (this.#take('>')) return left > this.#sum() ? 1 : 0;
    if (this.#take('=')) return left === this.#sum() ? 1 : 0;
    return left;
  }

  end(): void {
    const rest = this.#parts[this.#at];
    if (rest !== undefined) throw new SyntaxError(`the trace goes on with ${JSON.stringify(rest)}`);
  }

  #sum(): number {
    let value = this.#product();
    for (;;) {
      if (this.#take('+')) value += this.#product();
      else if (this.#take('-')) value -= this.#product();
      else return value;
    }
  }

  #product(): number {
    let value = this.#single();
    for (;;) {
      if (this.#take('*')) value *= this.#single();
      else if (this.#take('/')) value /= this.#single();
      else return value;
    }
  }

  #single(): number {
    if (this.#take('-')) return -this.#single();
    if (this.#take('(')) return this.#closed(this.comparison());
    const part = this.#parts[this.#at];
    this.#at += 1;
    switch (part?.kind) {
      case 'operand':
        return part.value;
      case 'number':
        return Number(part.text);
      case 'function':
        return this.#call(part.text);
      default:
        throw new SyntaxError(`a value was wanted and not ${JSON.stringify(part)}`);
    }
  }

  #call(name: string): number {
    const calculate = functions[name];
    if (calculate === undefined || !this.#take('(')) throw new SyntaxError(`${name} is no function here`);
    const values = [this.comparison()];
    while (this.#take(';')) values.push(this.comparison());
    return this.#closed(calculate(...values));
  }

  #closed(value: number): number {
    if (!this.#take(')')) throw new SyntaxError('a bracket is not closed');
    return value;
  }

  #take(sign: string): boolean {
    const part = this.#parts[this.#at];
    if (part?.kind !== 'sign' || part.text !== sign) return false;
    this.#at += 1;
    return true;
  }
}
