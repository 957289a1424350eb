// Makes typed text plain: Slack leftovers, smart quotes, full-width digits, odd spaces, bullets and emoji become simple characters.
// Each kept character remembers where it stood, so that a reply can quote the person's own words.

export interface CleanText {
  readonly text: string; // lower case
  readonly at: readonly number[]; // index in the original of each character; one more than the text is long
  readonly original: string;
}

/** A thin or no-break space between digits: it marks thousands, an ordinary space may not. */
export const thinSpace = '\u2009';
/** Stands where an emoji or a mention stood: it separates, as a comma does. */
export const gap = ',';

const same: Readonly<Record<string, string>> = {
  '\u2018': "'",
  '\u2019': "'",
  '\u201b': "'",
  '\u2032': "'",
  '`': "'",
  '\u201c': '"',
  '\u201d': '"',
  '\u201e': '"',
  '\u2033': '"',
  '\u2010': '-',
  '\u2011': '-',
  '\u2012': '-',
  '\u2013': '-',
  '\u2014': '-',
  '\u2015': '-',
  '\u2212': '-',
  '\u00d7': 'x',
  '\u2022': '\n',
  '\u25cf': '\n',
  '\u25aa': '\n',
  '\u2023': '\n',
  '\u00b7': ',',
  '\u00a0': thinSpace,
  '\u2007': thinSpace,
  '\u2008': thinSpace,
  '\u2009': thinSpace,
  '\u202f': thinSpace,
  '\r': '\n',
  '\u2028': '\n',
  '\u2029': '\n',
  '\t': ' ',
  '[': '(',
  ']': ')',
  '\u2192': '>',
  '\u21d2': '>',
};

const plainOf = (char: string, code: number): string => {
  const known = same[char];
  if (known !== undefined) return known;
  if (code < 127) return char;
  if (code >= 0xff01 && code <= 0xff5e) return String.fromCharCode(code - 0xfee0);
  if ((code >= 0x2000 && code <= 0x2006) || code === 0x3000 || code === 0x205f || code === 0x1680) return ' ';
  if ((code >= 0x200b && code <= 0x200f) || (code >= 0x202a && code <= 0x202e) || (code >= 0x2060 && code <= 0x206f)) return '';
  if (code === 0xfeff || code === 0xfe0f || code === 0xad || (code >= 0x300 && code <= 0x36f)) return '';
  if ((code >= 0xd800 && code <= 0xdfff) || (code >= 0x2600 && code <= 0x27bf) || (code >= 0x2b00 && code <= 0x2bff)) return gap;
  return char;
};

// Slack's own marks: <@U1>, <#C1|name>, <!here>, <mailto:a|b>, <url|label>; :emoji:; entities a host left in.
const markup =
  /<[@#!][^<>\n]{1,80}>|<(?:https?|mailto|tel):[^<>\n]{1,2000}>|:[a-z][a-z0-9_+-]{1,30}:|:[+-]1:|:100:|&(?:amp|lt|gt);|https?:\/\/\S{1,2000}/gi;

const replacement = (mark: string): string => {
  const known: Readonly<Record<string, string>> = { '&amp;': '&', '&lt;': '<', '&gt;': '>' };
  return known[mark.toLowerCase()] ?? gap;
};

export const cleanText = (original: string): CleanText => {
  let text = '';
  const at: number[] = [];
  const keep = (char: string, index: number): void => {
    if (char === '') return;
    text += char;
    at.push(index);
  };
  const plainStretch = (from: number, to: number): void => {
    let copied = from;
    for (let index = from; index < to; index++) {
      const code = original.charCodeAt(index);
      // Most characters stand for themselves.
      if ((code >= 0x61 && code <= 0x7a) || code === 0x20) {
        at.push(index);
        continue;
      }
      text += original.slice(copied, index);
      copied = index + 1;
      const char = original[index] ?? '';
      const lower = char.toLowerCase();
      keep(plainOf(lower.length === 1 ? lower : char, code), index);
    }
    text += original.slice(copied, to);
  };
  let done = 0;
  for (const mark of original.matchAll(markup)) {
    plainStretch(done, mark.index);
    keep(replacement(mark[0]), mark.index);
    done = mark.index + mark[0].length;
  }
  plainStretch(done, original.length);
  at.push(original.length);
  return { text, at, original };
};

/** The person's own words between two places of the clean text. */
export const ownWords = (clean: CleanText, start: number, end: number): string => {
  const last = clean.at[Math.max(start, end - 1)] ?? 0;
  return clean.original.slice(clean.at[start] ?? 0, end > start ? last + 1 : last).trim();
};
