/** Boxes not laid yet, in order; place 0 stands before the first. */
export class BoxQueue {
  readonly #next: Int32Array;

  constructor(private readonly order: Int32Array) {
    this.#next = Int32Array.from({ length: order.length + 1 }, (_, place) =>
      place < order.length ? place + 1 : 0,
    );
  }

  get isEmpty(): boolean {
    return this.#next[0] === 0;
  }

  /** @returns the next place, 0 after the last. */
  after(place: number): number {
    return this.#next[place] ?? 0;
  }

  boxAt(place: number): number {
    return this.order[place - 1] ?? 0;
  }

  take(before: number): void {
    this.#next[before] = this.after(this.after(before));
  }
}
