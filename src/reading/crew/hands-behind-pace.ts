// How many are at it, told in a clause of its own beside how long one takes: "one crown takes 45 mins, 2 girls working".

import { clausesOf } from '../held/clauses.ts';
import { firstAt, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part, Stretch } from '../text/message.ts';
import { firstWhere, isCount, isSingle, type Token } from '../text/token.ts';

const opens = "(,|-|;|and|but|with|we have|we've|we've got|got|have|there's|theres|there are|there'll be|so){0,3}";
const who = '(<bench>|of us|girls|lads|boys|ladies|women|men|people|hands|friends|mates|pairs of hands)';
const at =
  "(are|is|will be|'ll be)? (working|making|on it|on this|on them|at it|at the bench|on the bench|on the job|in|helping|free|available|wiring|working on (it|this|them))?";
const forms = [
  `${opens} (the)? <n:count> (of (the|my|our))? (extra|other|more)? ${who} ${at} (now|today|at the moment)?`,
  `${opens} <n:count> (of us)? (working|on it|on this|on them|at it|at the bench|on the bench|on the job|working on (it|this|them))`,
].map((source) => pattern(source));

const timed = ({ number, means }: Token): boolean => number?.form === 'duration' || means['piece'] !== undefined;
// "one crown takes 45 mins, 2 left": what those two are is told to nobody by a pace.
const leavesCount = ({ tokens }: Reader, { start, end }: Stretch): boolean => {
  const words = tokens.slice(start, end);
  return (
    words.some((token) => isCount(token)) &&
    !words.some(timed) &&
    words.every(({ number }) => number === undefined || number.form === 'plain')
  );
};

/** `undefined` where no clause says it; NaN where it says a range, or counts something else. */
export const handsBehindPace = (reader: Reader, part: Part): number | undefined => {
  const clauses = clausesOf(reader, part);
  const [, ...behind] = clauses;
  const told = behind.flatMap(({ start, end }) => {
    const match = firstAt(forms, reader.tokens, start, end);
    if (match?.end === end) return [match.kept['n']?.number];
    return leavesCount(reader, { start, end }) ? [undefined] : [];
  });
  const [number] = told;
  if (told.length === 0) {
    // "crowns 40 mins each and 3 girls on it"
    const at = firstWhere(reader.tokens, part.start + 1, part.end, ({ text }) => /^(and|with)$/.test(text));
    const match = at < 0 ? undefined : firstAt(forms, reader.tokens, at, part.end);
    if (match?.end !== part.end) return undefined;
    told.push(match.kept['n']?.number);
  }
  return told.length > 1 || !isSingle(number) ? Number.NaN : Number(number.amount);
};
