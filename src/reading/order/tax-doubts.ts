// Where words about tax say too little or too much to be kept: "not sure re gst", "no vat on top", "12 inc … 30 ex".

import { type Match, pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import { placesIn } from '../text/places-in.ts';
import { isEnd } from '../text/sentence-end.ts';

/** "no vat on top" may mean "no, vat on top". */
export const noneOnTop = pattern(
  "(no <tax:tax> (on top|extra|to add)|<tax:tax> (is|are)? (not|isn't|isnt|aren't|never) (on top|extra|additional)|no (extra|further|additional|more) <tax:tax>)",
);

// "not sure re gst", "don't know yet if vat's in": which tax is said, and not where it goes.
export const unsure = pattern(
  "(not sure|unsure|dont know|don't know|no idea|not decided|havent decided|need to check|to check|tbc) (yet)? (if|whether|about|re|on|abt)? (the|it's|its)? <tax:tax> (is|'s|in|inc|incl|included|or not|on|on top|extra|yet)?",
);

// "van hire 95 inc gst": the tax of a number that nobody could read is nobody's.
export const ofUnread = (reader: Reader, index: number): boolean => {
  if (ofRent(reader, index)) return true;
  const before = reader.tokens[index - 1];
  return (
    before?.number !== undefined &&
    before.number.form !== 'percent' &&
    reader.free(index - 1) &&
    reader.facts.length + reader.asks.length === 0
  );
};

// "rent goes up to €1,520 a month, plus VAT": no order's tax.
const ofRent = ({ tokens }: Reader, index: number): boolean => {
  for (let at = index - 1; at >= 0 && !isEnd(tokens, at); at--) {
    if (tokens[at]?.means['piece'] !== undefined) return false;
    if (/^(rent|lease|insurance|electricity)$/.test(tokens[at]?.text ?? '')) return true;
  }
  return false;
};

/** Whether the words here stand right behind a price. */
export const besidePrice = ({ tokens }: Reader, index: number): boolean => {
  const before = tokens[index - 1];
  return before?.number?.form === 'money' || before?.number?.form === 'plain' || before?.means['each'] !== undefined;
};

/** "GST and PST on top": two taxes that go one way. The first is the order's; the second is left for the person to see. */
export const bothTaxes = '<tax:tax> ((and|&|+|n|/|,|plus) (the)? <second:taxName>)?';
export const withoutSecond = ({ tokens }: Reader, { start, end, kept }: Match, finding: Finding): Finding => {
  if (kept['second'] === undefined) return finding;
  return { ...finding, takes: placesIn({ start, end }).filter((at) => tokens[at] !== kept['second']) };
};
