// How a name or a phrase begins a line.

/** The first letter raised, the rest as it is. */
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
