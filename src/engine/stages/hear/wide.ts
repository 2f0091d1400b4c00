/** A wide filter, as a good station of any make has it: flat between these, nothing else. Hz. */
export const WIDE = { low: 100, high: 3000 } as const;
