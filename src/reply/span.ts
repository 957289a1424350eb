// The small vocabulary that sentences are built from: text`…` joins words and tagged spans into a line.

import type { Line, Meaning, Span } from './reply.ts';

const of =
  (meaning: Meaning) =>
  (text: string | number): Span => ({ text: String(text), meaning });

export const strong = of('strong');
export const moneySpan = of('money');
export const dateSpan = of('date');
export const pieceSpan = of('piece');
export const countSpan = of('count');
export const assumedSpan = of('assumed');
export const problemSpan = of('problem');

/** A person's own words: shown in quotation marks, at most 60 characters, never as markup. */
export const quoted = (words: string): Span => ({ text: `“${shorten(words, 60)}”`, meaning: 'quoted' });

/** A person's own words as a plain cell or name, without the marks. */
export const ownWords = (words: string): Span => ({ text: shorten(words, 60), meaning: 'quoted' });

const shorten = (words: string, most: number): string => {
  const characters = [...words.replace(/\s+/g, ' ').trim()];
  return characters.length > most ? `${characters.slice(0, most - 1).join('')}…` : characters.join('');
};

type Part = string | number | Span | Line;

/** text`${moneySpan('£3.26')} each` → a line. Plain strings become plain spans; lines are spliced in. */
export const text = (strings: TemplateStringsArray, ...parts: readonly Part[]): Line => {
  const spans: Span[] = [];
  strings.forEach((words, index) => {
    if (words !== '') spans.push({ text: words, meaning: 'plain' });
    const part = parts[index];
    if (part === undefined) return;
    if (typeof part === 'string' || typeof part === 'number') spans.push({ text: String(part), meaning: 'plain' });
    else if (Array.isArray(part)) spans.push(...(part as Line));
    else spans.push(part as Span);
  });
  return spans;
};

/** Lines joined by words between them: joined(lines, ', '). */
export const joined = (lines: readonly Line[], between: string): Line =>
  lines.flatMap((line, index) => (index === 0 ? line : [{ text: between, meaning: 'plain' as const }, ...line]));

export const plainLine = (words: string): Line => [{ text: words, meaning: 'plain' }];
