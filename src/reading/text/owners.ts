// Whose a thing is, said behind its word: "groom's".

/** The word without the owner's ending: "groom's" is "groom". */
export const withoutOwner = (text: string): string => (text.endsWith("'s") ? text.slice(0, -2) : text);
