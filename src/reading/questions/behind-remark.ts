// A question behind a remark that has nothing to do with it: "running out the door, is anything due sat?", "client's on the phone - how many left".

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { firstWhere, type Token } from '../text/token.ts';
import { openers } from './opening-words.ts';
import { tells } from './opens-and-tells.ts';

// What names the thing, the day or the case that is asked about belongs to the question.
const ours = ['piece', 'ingredient'];
const ourTags = [...ours, 'material', 'taxName', 'taxWord', 'role', 'owner', 'month', 'weekday', 'budget', 'other'];
const cases =
  /^(if|when|once|until|till|unless|for|with|without|by|say|suppose|supposing|assuming|given|since|like|as|after|before|instead|what|which)$/;
const days = /^(today|tonight|tomorrow|tmrw|week|weekend|wholesale|labour|labor|margin|price|total|recipe|drying)$/;
// "before i forget, is the 14 march one dried": said of no case and no day.
const byTheWay = pattern(
  '(before i forget|while i remember|while i think of it|(when|if|whenever) (you|u|ya) (get|have|got) (a|the)? (sec|second|min|minute|mo|mins|chance|moment|time)|(when|if) (you|u) can|as i (type|write|speak))',
);
// "forget the crowns, how many bouts left": only to be asked of the others.
const setAside = pattern(
  '(forget|ignore|skip|leave|never mind|nevermind|nvm|not) (about)? (the|those|our)? <piece> (for (now|moment|a sec))?',
);
const isRemark = (tokens: readonly Token[], start: number, end: number, loosely: boolean): boolean => {
  const [first] = tokens.slice(start, start + 1);
  if (byTheWay.at(tokens, start, end)?.end === end || setAside.at(tokens, start, end)?.end === end) return true;
  if (end - start < 2 || first === undefined || (!loosely && cases.test(first.text)) || openers.has(first.text)) return false;
  const belongs = (token: Token, index: number): boolean =>
    (token.number !== undefined && !(token.text === 'one' && (loosely || tokens[index - 1]?.text === 'quick'))) ||
    (loosely ? ours : ourTags).some((tag) => token.means[tag] !== undefined) ||
    (!loosely && days.test(token.text));
  return firstWhere(tokens, start, end, belongs) < 0;
};

const leads = /^(so|and|but|now|also|quickly|just|anyway|ok|hey|,|-)$/;
// "ring me, when the van is back we load" asks nothing: without a question mark only these do.
const plainly = /^(how|what|what's|whats|when's|whens|any|anything)$/;
const auxiliary = /^(do|does|did|is|are|was|were|can|could|will|would|should|shall|have|has)$/;
const asks = (tokens: readonly Token[], index: number, asked: boolean): boolean => {
  const [word, next] = [tokens[index]?.text ?? '', tokens[index + 1]?.text ?? ''];
  if (plainly.test(word)) return true;
  // Whether these open a question is asked of the clause itself.
  if (auxiliary.test(word)) return true;
  return openers.has(word) && (asked || auxiliary.test(next));
};

/** The question alone; undefined when what stands before it may belong to it, `loosely` only when pieces, goods or numbers do. */
export const behindRemark = (reader: Reader, part: Part, loosely: boolean): Part | undefined => {
  const { tokens } = reader;
  for (let index = part.start + 2; index < part.end - 1; index++) {
    const token = tokens[index];
    if (token?.text !== ',' && (token?.text !== '-' || (token.glued && tokens[index + 1]?.glued === true))) continue;
    let from = index + 1;
    while (leads.test(tokens[from]?.text ?? '')) from += 1;
    const asked = from < part.end && asks(tokens, from, part.asked) && !tells(reader, from, part);
    if (asked) return isRemark(tokens, part.start, index, loosely) ? { ...part, start: from } : undefined;
    index = from - 1; // what leads leads from no other place
  }
  return undefined;
};
