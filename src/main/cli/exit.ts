/** What a run of the terminal program says by its exit code. */
export const EXIT = { clean: 0, stops: 1, badInput: 2, bug: 3 } as const
export type Exit = (typeof EXIT)[keyof typeof EXIT]
