// Shares of one as they are typed. A third has no last digit, so it is written to three places.

export const slashedParts: Readonly<Record<string, string>> = { '1/2': '0.5', '1/4': '0.25', '3/4': '0.75' };
const quarterSigns: Readonly<Record<string, string>> = { '½': '0.5', '¼': '0.25', '¾': '0.75' };
export const signParts: Readonly<Record<string, string>> = { ...quarterSigns, '⅓': '0.333', '⅔': '0.667' };
/** Those that make a whole number of a dozen. */
export const exactParts: Readonly<Record<string, string>> = { ...slashedParts, ...quarterSigns };
