// Work that is said to be finished and is not, or not all of it: "six buttonholes done", "all done bar the crown", "12 crowns nearly done".

import { type Match, pattern } from '../pattern.ts';
import type { Reader, Unworded } from '../phrase.ts';
import type { Token } from '../text/token.ts';
import { isUnlisted } from '../words/other-things.ts';
import { leftOfGoods } from './left-of-goods.ts';

// "six buttonholes done" is six, not all of them.
const describing =
  /^(of|more|x|dried|fresh|preserved|silk|other|nos|no|pcs|pc|off|small|big|little|white|red|pink|spare|spares|extra|new)$/;
// "22 bouts in total made": the words sum up, and say nothing of all.
const sumsUp = /^(in total|total|all up|all told|altogether|overall|in all|grand total)$/;
const someOf =
  /^(spare|spares|extra|several|various|numerous|loads|lots|plenty|handful|bunch|majority|bulk|practically|virtually|both|of|more|last|another|a|some|most|few|couple|half|third|quarter|quarters|thirds|not|hardly|nearly|almost|no|none|nobody|nobody's|nobodys|noone|noones|noone's|one's|ones)$/;
const exceptions = /^(bar|except|apart|excluding|minus|save|barring)$/;
const leavesOut = (tokens: readonly Token[], at: number): boolean => {
  const [word, next] = [tokens[at]?.text ?? '', tokens[at + 1]];
  return next?.number === undefined && (exceptions.test(word) || (word === 'but' && /^(the|a|for|not|my|our)$/.test(next?.text ?? '')));
};
// "12 crowns nearly done" is none of them done; "most of the 12 done" is not twelve.
// "40 bouts done by 5" is when they must be.
const deadline = pattern('by (<plain>|<time>|<weekday>|tomorrow|tonight|noon)');
const alreadyBegun = /^(started|start|began|since|already|had|got|have|made|did)$/;
const notQuite = /^(nearly|almost|practically|virtually)\b/i;
export const nearly = (reader: Reader, match: Match, fact: Unworded): boolean => {
  if (fact.fact === 'left') return leftOfGoods(reader.tokens, match);
  if (fact.fact !== 'made' || fact.stage !== undefined || fact.fraction !== undefined) return false;
  const stretch = reader.tokens.slice(match.start, match.end);
  if (stretch.some((token, at) => notQuite.test(token.text) || notQuite.test(reader.words(match.start + at, match.start + at + 1))))
    return true;
  if (
    deadline.at(reader.tokens, match.end, reader.tokens.length) !== undefined &&
    !reader.tokens.some((token) => alreadyBegun.test(token.text))
  )
    return true;
  const before = reader.tokens.slice(Math.max(0, match.start - 3), match.start).map((token) => token.text);
  return /(^| )(half|third|quarter|most|some|part|few|fraction)( of)?( the| those| our| my)?$/.test(before.join(' '));
};
// "nearly all the bouts", "most of our crowns"
const skipped = /^(the|of|those|these|our|my|all|them)$/;
const wordBefore = (tokens: readonly Token[], start: number): string => {
  let at = start - 1;
  while (at > start - 5 && skipped.test(tokens[at]?.text ?? '')) at -= 1;
  return tokens[at]?.text ?? '';
};
const isWearer = (token: Token | undefined): boolean => token?.means['role'] !== undefined || token?.means['owner'] !== undefined;
export const partial = (tokens: readonly Token[], match: Match, fact: Unworded): boolean => {
  const before = tokens[match.start - 1];
  // "5 corsages half made" says how far five of them are; "all done bar the crown" is not all.
  if (
    fact.fact === 'made' &&
    fact.fraction !== undefined &&
    before?.means['piece'] !== undefined &&
    tokens[match.start - 2]?.number !== undefined
  )
    return true;
  if (fact.fact === 'made' && fact.all === true && (leavesOut(tokens, match.end) || sumsUp.test(tokens[match.start]?.text ?? '')))
    return true;
  if (fact.fact !== 'made' || fact.all !== true || fact.of !== undefined || fact.count !== undefined) return false;
  const [near, far] = [tokens[match.start - 1], tokens[match.start - 2]];
  // "bridesmaids all done", "groom's side all boxed": theirs, and not everybody's.
  if (fact.piece === undefined && [near, /^(party|side|family)$/.test(near?.text ?? '') ? far : undefined].some(isWearer)) return true;
  return (
    near?.number !== undefined ||
    (far?.number !== undefined && near !== undefined && (describing.test(near.text) || isUnlisted(near))) ||
    (tokens[match.start - 3]?.number !== undefined && [near, far].every((token) => token !== undefined && isUnlisted(token))) ||
    someOf.test(wordBefore(tokens, match.start))
  );
};
