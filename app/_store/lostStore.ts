/** What a store that was deleted under an open page has cost, once the page has written back all that it held. */
export interface LostStore {
  /** Pictures and papers' files that are named here and were in the deleted store alone. */
  readonly files: number;
}
