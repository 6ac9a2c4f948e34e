/** Kinds of file as a browser's field takes them: copies of today and of before. */
export const COPY_TYPES = '.zip,.json,application/zip,application/json';
