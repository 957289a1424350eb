// Text that people typed, made safe to print: control characters can break a calendar file, a drawing or a page, and none means anything here.

/** Keeps line breaks (as \n), turns tabs into spaces and drops every other control character and half of a character. */
export const plainText = (text: string): string =>
  text
    .replace(/\r\n?|[\u2028\u2029\u0085]/gu, '\n')
    .replace(/\t/gu, ' ')
    .replace(/(?!\n)[\p{Cc}\p{Cs}\u200E\u200F\u202A-\u202E\u2066-\u2069\uFEFF\uFFFE\uFFFF]/gu, '')
    .normalize('NFC');

/** The same on one line. */
export const oneLine = (text: string): string => plainText(text).replace(/\s+/gu, ' ').trim();
