import type { Workshop } from '@/shared/schemas/workshop';

/** @returns whether a workshop is still that of the example, and nobody's own. */
export const isExampleWorkshop = ({ printers }: Workshop): boolean => printers[0]?.id === 'desk-printer';
