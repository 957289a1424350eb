// A price with each or all said to be open: "15 corsages at 30, not sure if its each or the lot". The price stands as one that says neither, so that it is asked.

import { formOf, type Match } from '../pattern.ts';
import type { Token } from './token.ts';

const unsaid =
  "(not (sure|certain|clear|said|stated)?|unsure|unclear|dunno|no idea|(i|she|he|they|we|client|bride|planner){0,1} (didn't|didnt|don't|dont|doesn't|doesnt|hasn't|hasnt|haven't|havent|never|wouldn't|wouldnt) (actually|really)? (say|said|know|specify|specified|clarify|tell me|tell us|mention|sure))";
const is =
  "(it's|its|it is|that's|thats|that is|that was|it was|they're|theyre|this is|he meant|she meant|they meant|meant|means|is that|is it)";
const pair = '((for)? <each> or (for)? (the)? (<all>|all)|(for)? (the)? (<all>|all) or (for)? <each>)';
const marks = '(,|.|-|;|\\(|but|and|tho|though|&|just|still|yet|so|now){0,3}';
const longest = 20;
const form = formOf(
  `(at|@|for|((she|he|they|client|bride|planner|mum) (has|'s)?)? (said|says|told me|told us|quoted|mentioned|gave me)) (about)? <n:amount> ${marks} (${unsaid} (yet)? (if|whether|that)? (${is})? ${pair}|${is}? ${pair} (,|-)? ${unsaid}) (yet|though|tho|\\)|.){0,2}`,
);
const bare = formOf(
  `<n:amount> ${marks} (${unsaid} (yet)? (if|whether|that)? (${is})? ${pair}|${is}? ${pair} (,|-)? ${unsaid}) (yet|though|tho|\\)|.){0,2}`,
);

// "not sure if each or all have pins" leaves something else open.
const closes = (next: Token | undefined, last: Token | undefined): boolean =>
  next === undefined || next.kind !== 'word' || last?.kind === 'sign' || /^(and|plus|inc|incl|ex|excl|n)$/.test(next.text);

const openAt = (tokens: readonly Token[], until: number): Match | undefined => {
  for (let index = Math.max(0, until - longest); index < until; index++) {
    const match = form.at(tokens, index, tokens.length) ?? bare.at(tokens, index, tokens.length);
    if (match !== undefined) return match;
  }
  return undefined;
};

/** The tokens with that price bare. */
export const withOpenPer = (tokens: readonly Token[]): readonly Token[] => {
  const or = tokens.findIndex(
    ({ text }, at) =>
      text === 'or' &&
      (tokens[at - 1]?.means['each'] !== undefined || tokens[at - 1]?.means['all'] !== undefined || tokens[at - 1]?.text === 'all'),
  );
  if (or < 1 || tokens.some(({ text }) => text === '?')) return tokens;
  const match = openAt(tokens, or);
  const amount = match?.kept['n'];
  if (match === undefined || amount === undefined || !closes(tokens[match.end], tokens[match.end - 1])) return tokens;
  return [...tokens.slice(0, match.start), amount, ...tokens.slice(match.end)];
};
