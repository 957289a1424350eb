// An order told with its tax left open: "told her £14 n £22, no idea if thats with vat or not". The order stands, and nobody has said where the tax goes.

import { beginsIn, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const nobodyKnows =
  "((no|not a|without a) (idea|clue)|not sure|unsure|dunno|dont know|don't know|do not know|no one said|nobody said|unclear|not clear|not said|(i|we|she|he|they|you|client|bride|mum|mom|he's|she's) (havent|haven't|hasnt|hasn't|didnt|didn't|did not|never) (say|said|ask|asked|mention|mentioned|specify|specified|check|checked|confirm|confirmed)|(didnt|didn't|havent|haven't|forgot to|need to|must|will|have to|gotta|to|ill|i'll|we'll|should) (say|ask|asked|check|checked|confirm)|(i|we)? (cant|can't|cannot|dont|don't) (remember|recall|tell|say))";
const rest =
  '(is|was|or not|or without|or ex|or inc|or with|or whatever|or plus|or no|yet|tho|though|at all|i|we|on top|extra|in|it|that|there|them){0,4}';
const forms = [
  `${nobodyKnows} (yet|still)? (if|whether) <any>{0,4} <tax> ${rest}`,
  `(if|whether) <any>{0,4} <tax> ${rest} ${nobodyKnows}`,
].map((source) => pattern(source));
const asked = pattern(`(is|was|does|are|were) (that|it|this|they|those|these) <any>{0,2} <tax> ${rest}`);
const all = [...forms, asked];

// An order stands before it in the same breath: a kind and two numbers, how many and at what.
const tellsOrder = ({ tokens }: Reader, start: number, end: number): boolean => {
  const told = tokens.slice(start, end);
  return told.some(({ means }) => means['piece'] !== undefined) && told.filter(({ number }) => number !== undefined).length >= 2;
};
const opens = /^(what|whats|what's|how|if|is|are|can|could|does|do|would|should|when|which)$/;

const inPart = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  if (opens.test(tokens[part.start]?.text ?? '')) return undefined;
  for (let index = part.start + 3; index < part.end; index++) {
    for (const form of all) {
      const match = form.at(tokens, index, part.end);
      if (match === undefined || match.end !== part.end || !tellsOrder(reader, part.start, index)) continue;
      const name = tokens.slice(index, match.end).find(({ means }) => means['taxName'] !== undefined)?.means['taxName'];
      if (form === asked) return found(reader, index, match.end, [{ fact: 'question', asks: 'taxStatus' }]);
      return found(reader, index, match.end, name === undefined ? [] : [{ fact: 'tax', name }]);
    }
  }
  return undefined;
};

const find = (reader: Reader): Finding[] => {
  if (!beginsIn(all, reader.tokens, 0, reader.tokens.length)) return [];
  return reader
    .untouched()
    .slice(0, 20)
    .flatMap((part) => inPart(reader, part) ?? []);
};

export const taxLeftOpen: Phrase = { name: 'tax left open', examples: [], find };
