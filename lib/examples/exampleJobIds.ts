/** Ids of the jobs a first visit finds; a maker's own jobs never have them. */
export const exampleJobIds: readonly string[] = ['club-order', 'fair-shirts', 'fair-mugs'];
