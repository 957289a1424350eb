// Who is named to work: "me", "2 juniors", "jo and me", "3 on".

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { tagsOf } from '../text/means.ts';
import { isNameless, isSingle, type Token } from '../text/token.ts';
import { usualWords } from '../words/usual-words.ts';

const myself = /^(me|i|i'm|im|i'll|myself)$/;
const helpers = pattern('(the|our|my|a|an)? (<n:count>)? (extra|other|new)? (<b:bench>)');
// "3 on for tmrw, 7 til 12": by the day and the hours they can be nothing but hands.
const bareHands = pattern('<n:count> (in|on|rostered|rostered on|working|coming in|at the bench|on the bench)');
const handsMost = 12;
const several = /^(us|of us|staff|team|crew|people|ppl|hands|folk|women|men)$|s$/;
const beside = /^(and|&|n|\+|plus)$/;
/** Words that may stand between who works and the day and hours. */
export const does =
  /^(:|-|,|\(|is|'s|are|am|will|be|can|could|do|does|doing|work|works|working|in|on|at|the|bench|help|helps|helping|rostered|free|available|here|just|only|also|from|for|about|around|shift|has|have|got|both|this|next|coming)$/;
const noName =
  /^(church|market|shop|studio|school|brunch|lunch|dinner|gym|yoga|footy|football|service|ceremony|wedding|setup|delivery|pickup|collection|bump|rehearsal|party|fair|fete|stall|class|ballet|swimming|dentist|bank|post|cafe|pub|florist|viewing|open|closed|everyone|everybody|someone|nobody|all|both)$/;

export interface Who {
  readonly people: number;
  readonly sure: boolean;
  readonly named: boolean;
  readonly end: number;
}

const isName = (token: Token | undefined): boolean =>
  token?.kind === 'word' &&
  token.number === undefined &&
  token.text.length > 1 &&
  (isNameless(token) || tagsOf(token.means).every((tag) => tag === 'role')) &&
  !several.test(token.means['role'] === undefined ? '' : token.text) &&
  !noName.test(token.text) &&
  !does.test(token.text) &&
  !usualWords.has(token.text);

const oneAt = (reader: Reader, index: number, end: number): Who | undefined => {
  const { tokens } = reader;
  if (index >= end) return undefined;
  if (myself.test(tokens[index]?.text ?? '')) return { people: 1, sure: true, named: false, end: index + 1 };
  const match = helpers.at(tokens, index, end);
  if (match !== undefined) {
    const { n, b } = match.kept;
    if (n?.number?.max !== undefined || (n === undefined && several.test(b?.text ?? 's'))) return undefined;
    return { people: n === undefined ? 1 : Number(n.number?.amount), sure: true, named: false, end: match.end };
  }
  const bare = bareHands.at(tokens, index, end)?.kept['n']?.number;
  if (bare !== undefined && isSingle(bare) && Number(bare.amount) <= handsMost)
    return { people: Number(bare.amount), sure: true, named: false, end: index + 1 };
  return isName(tokens[index]) ? { people: 1, sure: false, named: true, end: index + 1 } : undefined;
};

/** Who is named at `index`, with those who are joined to them. */
export const whoAt = (reader: Reader, index: number, end: number): Who | undefined => {
  let who = oneAt(reader, index, end);
  while (who !== undefined && beside.test(reader.tokens[who.end]?.text ?? '')) {
    const next = oneAt(reader, who.end + 1, end);
    // "me sat and jo sun" goes on with another shift.
    if (next === undefined) break;
    who = { people: who.people + next.people, sure: who.sure || next.sure, named: who.named || next.named, end: next.end };
  }
  return who;
};
