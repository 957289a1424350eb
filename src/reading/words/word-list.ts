// A list of words written as running text, so that a vocabulary stays readable.

/** Splits at commas and trims; line breaks do not matter. */
export const wordList = (text: string): readonly string[] =>
  text
    .split(',')
    .map((word) => word.trim().replace(/\s+/g, ' '))
    .filter((word) => word !== '');
