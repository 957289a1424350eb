// Counts as people read them: from a thousand on with a comma, as money has it.

/** "40", "1,824", "10,000". A count that is text already ("40 to 45", "half") stays as it is but for its whole numbers. */
export const grouped = (count: number | string): string => String(count).replace(/(?<![\d.])\d{4,}(?![\d,])/g, withCommas);

const withCommas = (digits: string): string => digits.replace(/\B(?=(\d{3})+$)/g, ',');
