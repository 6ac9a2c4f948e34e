/** Gives whoever else uses this thread a turn. */
export const nextTask = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));
