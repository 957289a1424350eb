// An enquiry form pasted with its labels: "Buttonholes needed: 12", "How many corsages? 3", "Dried or fresh: dried". A label asks nothing and
// orders nothing by itself: of a kind its name is left, of the materials to choose from nothing.

import { linesOf } from './lines.ts';
import type { Stretch } from './message.ts';
import { changed, type Token } from './token.ts';

const longestLabel = 9; // tokens
const fewest = 2; // labelled lines: one alone may be a sentence
const asksFor =
  /^(needed|required|wanted|requested|qty|quantity|amount|number|no|nr|how|many|of|do|you|need|want|would|like|total|the|your|\.)$/;
const chooses = /^(or|and|\/|,|flowers|flower|material|materials|stems|preference|preferred|prefer|do|you|would|like|the|type)$/;

interface Labelled extends Stretch {
  readonly mark: number; // the colon or the question mark behind the label
}

const labelled = (tokens: readonly Token[], line: Stretch): Labelled | undefined => {
  for (let index = line.start; index < Math.min(line.end - 1, line.start + longestLabel); index++) {
    const { text } = tokens[index] as Token;
    if (text === ':' || text === '?') return { ...line, mark: index };
  }
  return undefined;
};

const every = (tokens: readonly Token[], from: number, to: number, passes: (token: Token) => boolean): boolean => {
  for (let index = from; index < to; index++) if (!passes(tokens[index] as Token)) return false;
  return to > from;
};

/** The form with each label made plain. */
export const withFormLines = (tokens: readonly Token[]): readonly Token[] => {
  if (!tokens.some(({ kind }) => kind === 'line')) return tokens;
  const lines = linesOf(tokens).flatMap((line) => labelled(tokens, line) ?? []);
  if (lines.length < fewest) return tokens;
  const dropped = new Set<number>();
  const colons = new Set<number>();
  for (const { start, end, mark } of lines) {
    const kinds = every(tokens, start, mark, ({ text, means }) => asksFor.test(text) || means.piece !== undefined);
    const named = tokens.slice(start, mark).some(({ means }) => means.piece !== undefined);
    const value = tokens[mark + 1];
    if (kinds && named && value?.number !== undefined && mark + 2 === end) {
      colons.add(mark);
      // "Flower crowns: 0"
      const none = value.number.amount === '0';
      for (let index = start; index < (none ? end : mark); index++)
        if (none || tokens[index]?.means.piece === undefined) dropped.add(index);
    }
    const materials = every(tokens, start, mark, ({ text, means }) => chooses.test(text) || means.material !== undefined);
    const several = tokens.slice(start, mark).filter(({ means }) => means.material !== undefined).length > 1;
    if (materials && several) for (let index = start; index <= mark; index++) dropped.add(index);
  }
  if (dropped.size + colons.size === 0) return tokens;
  return tokens.flatMap((token, index) => (dropped.has(index) ? [] : colons.has(index) ? [changed(token, { text: ':' })] : [token]));
};
