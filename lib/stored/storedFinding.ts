import type { ZodError } from 'zod';

/** Where a schema refused a value, and what it said. */
export interface SchemaIssue {
  readonly path: readonly (string | number)[];
  readonly message: string;
}

/** Why something kept, or about to be kept, cannot be read as a document. */
export type StoredFinding =
  | { readonly code: 'notADocument'; readonly issues: readonly SchemaIssue[] }
  | { readonly code: 'unknownKind'; readonly kind: string }
  | { readonly code: 'newerVersion'; readonly version: number; readonly known: number }
  | { readonly code: 'stepMissing'; readonly fromVersion: number }
  | { readonly code: 'stepFailed'; readonly fromVersion: number; readonly message: string }
  /** A paper is no longer what went out: its text and its own hash do not fit. */
  | { readonly code: 'paperDamaged' }
  /** It came from elsewhere, and something else is here under its number, or under one that it names. */
  | { readonly code: 'numberTaken' }
  | { readonly code: 'bodyInvalid'; readonly issues: readonly SchemaIssue[] };

/** @returns what a schema refused, without anything of the schema library in it. */
export const schemaIssues = (error: ZodError): readonly SchemaIssue[] =>
  error.issues.map(({ path, message }) => ({
    path: path.map((step) => (typeof step === 'symbol' ? String(step) : step)),
    message,
  }));
