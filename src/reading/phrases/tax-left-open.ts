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
// "12 bouts at 14 each with gst or without"
const either = pattern(
  '(,|-|;)? (with|inc|incl|including|plus|before|in|ex|excl) (the)? <tax> or (without|ex|excl|not|no|plus|after|with|inc|incl|on top) (it|<tax>)?',
);
// "that 28, is it with tax or without": a number that was told before, and nothing but how it stands to the tax.
const ofNumber = pattern(
  '(so|ok|and|hi|hey|right|,){0,2} (that|the|those|these|this|our|my|her|your) (price of|quote of)? <n:amount> ((and|&) <m:amount>)? (<each>|<all>|price|prices|quote|total|one|a <piece>|per <piece>|for the <piece>|you said|i said|you quoted|we quoted){0,2} (,|-|:)? ((is|was|are|were|does|do|did|has|have) (it|that|this|they|those|these)|(with|inc|incl|in|before|plus|ex|excl) (<tax>)? or) <any>{0,7}',
);
const saysTax = pattern('(<tax>|inc|incl|inclusive|ex|exc|excl|exclusive)');
// "that 28, is it inc the groom"
const ofWearers = pattern('(<role>|<owner>|<weekday>|<time>)');
const behindOrder = [...forms, asked, either];
const all = [...behindOrder, ofNumber];

// An order stands before it in the same breath: a kind and two numbers, how many and at what.
const tellsOrder = ({ tokens }: Reader, start: number, end: number): boolean => {
  const told = tokens.slice(start, end);
  return told.some(({ means }) => means['piece'] !== undefined) && told.filter(({ number }) => number !== undefined).length >= 2;
};
const opens = /^(what|whats|what's|how|if|is|are|can|could|does|do|would|should|when|which)$/;

const asksOfNumber = (reader: Reader, { start, end }: Part): Finding | undefined => {
  const match = ofNumber.at(reader.tokens, start, end);
  if (match === undefined || match.end !== end || saysTax.in(reader.tokens, start, end) === undefined) return undefined;
  if (ofWearers.in(reader.tokens, start, end) !== undefined) return undefined;
  const { n: one, m: another } = match.kept;
  const further = reader.tokens.slice(start, end).filter(({ number }) => number !== undefined).length > (another === undefined ? 1 : 2);
  if (further || one?.number === undefined) return undefined;
  const amount = another === undefined && one.number.max === undefined ? { amount: one.number.amount } : {};
  return found(reader, start, end, [{ fact: 'question', asks: 'taxStatus', ...amount }]);
};

const inPart = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  const alone = asksOfNumber(reader, part);
  if (alone !== undefined) return alone;
  if (opens.test(tokens[part.start]?.text ?? '')) return undefined;
  for (let index = part.start + 3; index < part.end; index++) {
    for (const form of behindOrder) {
      const match = form.at(tokens, index, part.end);
      if (match === undefined || match.end !== part.end || !tellsOrder(reader, part.start, index)) continue;
      const name = tokens.slice(index, match.end).find(({ means }) => means['taxName'] !== undefined)?.means['taxName'];
      if (form === asked || form === either) return found(reader, index, match.end, [{ fact: 'question', asks: 'taxStatus' }]);
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
