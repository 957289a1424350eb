// Time the bench really took: "took 3 hours for 12", "bench time was 5 hours", "we did it in 4 hours", "it took 2 of us 3 hours".

import type { PieceKind } from '../../handbook/pieces.ts';
import { speedAhead, speedSaid } from '../crew/crew-forms.ts';
import { firstIn, type Match, pattern } from '../pattern.ts';
import type { Unworded } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isSingle, type Token } from '../text/token.ts';

const whole = '(in total|all up|total|altogether|all in|in the end|all told|overall)';
const some = '(about|a <all>|just|nearly|roughly|over|only|around|exactly)';
const job = '(the lot|everything|it all|all of it|the job|the whole lot|the whole thing|the order|all of them|them all|them|it)';
const team = '(us|me|(the|all)? <k:count> <bench>|us <k:count>)';

const took = [
  // "last crown took 2 hours": one of them
  pattern(`(the)? (last|that|this|first|final|each|every|one|a|an) (single)? <one:piece> (took|taken) (me|us)? (${some})? <d:duration>`),
  pattern(
    `(it|that|this|they)? (all|really|actually)? (took|taken|spent) (${team})? (${some}){0,2} <d:duration> (between us|${whole})? (for|on|to make|to do|making|doing|to finish|to get through|getting through|to wire|to complete|to knock out|to box) (the|about|all|all the)? (<n:count> (of them|of the|of those|of these)? (<material>)? (<p:piece>)?|<p:piece>|${job})`,
  ),
  pattern(
    `<n:count> (<p:piece>)? (took|taken|in|done in|made in|finished in|boxed in|all done in|done and dusted in) (us|me|her|him|<unlisted>)? (${some})? <d:duration>`,
  ),
  pattern(`(the|all the|all|all of the) <many:piece> (took|taken) (${team})? (${some})? <d:duration> (between us|${whole})?`),
  pattern(`(it|that|this|they)? (all|really|actually)? (took) (${team})? (${some}){0,2} <d:duration> (between us|${whole})?`),
  pattern(
    `(actual|real|final|true) (bench|making|labour|labor|making up)? (time|hours|hrs) (was|were|is|came to|:|=)? (${some})? <d:duration>`,
  ),
  pattern(`(bench|making|labour|labor) (time|hours|hrs) (was|were|came to|ended up|ended up at) (${some})? <d:duration>`),
  pattern(`(did|made|finished|knocked out|got) (${job}) (done|finished|made)? in (${some})? <d:duration>`),
  pattern(`<d:duration> ${whole} (for|on) ${job}`),
  pattern(`(all|everything|it all|the lot) (was|is)? (done|finished|made) in (${some})? <d:duration>`),
];
const hours = pattern('(actual|real|final|true) (bench|making|labour|labor)? (hours|hrs) (was|were|:|=)? <h:plain>');

const unitMinutes: Readonly<Record<string, number>> = { hour: 60, min: 1 };
const minutesOf = (match: Match): number | undefined => {
  const number = match.kept['d']?.number;
  const unit = unitMinutes[number?.unit ?? ''];
  return !isSingle(number) || unit === undefined ? undefined : Number(number.amount) * unit;
};

const kindOf = (match: Match): { piece?: PieceKind } => {
  const kind = (match.kept['p'] ?? match.kept['many'] ?? match.kept['one'])?.means['piece'] as PieceKind | undefined;
  return ofKind(kind);
};

export interface Taken {
  readonly match: Match;
  readonly facts: readonly Unworded[];
}

// "20 bouts in 2 hrs is my usual"
const habit = pattern(
  "(is|'s|,|would be)? (my|our|the|her|his)? (usual|usually|normally|norm|on average|average|going rate|typical|typically)",
);
// "last year we did 40 in 6 hours": other work than this.
const earlier = pattern(
  '(last|the other|a previous|another) (year|time|month|season|summer|spring|autumn|fall|winter|wedding|job|event|one)',
);
const longest = 14; // words: more is a story

/** What a sentence says the work took, in minutes of one pair of hands. */
export const timeTaken = (tokens: readonly Token[], part: Part): Taken | undefined => {
  const plain = hours.in(tokens, part.start, part.end);
  const told = plain?.kept['h']?.number;
  if (plain !== undefined && isSingle(told))
    return { match: plain, facts: [{ fact: 'actual', what: 'minutes', minutes: Number(told.amount) * 60 }] };
  for (const form of took) {
    const match = firstIn([form], tokens, part.start, part.end);
    const time = match === undefined ? undefined : minutesOf(match);
    if (match === undefined || time === undefined || part.end - part.start > longest) continue;
    if (/^(does|do|makes|make|can|about|who|which|usually|normally|each|every|one)$/.test(tokens[match.start - 1]?.text ?? '')) continue; // a habit, not this job
    const words = tokens.slice(match.start, match.end);
    if (tokens[match.end]?.means['each'] !== undefined || habit.at(tokens, match.end, part.end) !== undefined) continue;
    const begins = tokens[match.start - 1]?.text ?? '';
    if (!/^(did|made|finished|done|completed)$/.test(begins) && speedSaid.at(tokens, match.end, part.end)?.end === part.end) continue; // "9 in 90 mins, that's my speed"
    if (speedAhead.in(tokens, part.start, match.start) !== undefined) continue; // "timed myself, 6 bouts in 45 mins"
    const single = match.kept['one'];
    if (single !== undefined && /[^s]s$/.test(single.text)) continue;
    const [count, hands] = [single === undefined ? match.kept['n']?.number?.amount : '1', match.kept['k']?.number?.amount];
    const said = words.some(({ text }) => /^(the lot|lot|everything|all|job|order|total|end|altogether|it|them)$/.test(text));
    const named = count !== undefined || match.kept['p'] !== undefined || match.kept['many'] !== undefined || said;
    if (!named && part.end - match.end > 1) continue;
    if (tokens.slice(part.start, match.start).some((token) => token.means['other'] !== undefined || token.means['everyday'] !== undefined))
      continue; // "the arch took 6 hours"
    if (earlier.in(tokens, part.start, part.end) !== undefined) continue;
    const together = words.some(({ text }) => text === 'between us' || text === 'between' || /^(in total|all up|total)$/.test(text));
    const fact: Unworded = {
      fact: 'actual',
      what: 'minutes',
      minutes: hands === undefined || together ? time : time * Number(hands),
      ...(count === undefined ? {} : { count: Number(count) }),
      ...kindOf(match),
    };
    // "12 done in 90 min" and "did 10 bouts in 2 hours" say both what is made and how long it took.
    const finished =
      words.some(({ text }) => /^(done|made|finished|boxed)$/.test(text)) ||
      (count !== undefined && /^(did|done|made|finished|completed|wired)$/.test(tokens[match.start - 1]?.text ?? ''));
    const made: Unworded = { fact: 'made', ...(count === undefined ? { all: true } : { count: Number(count) }), ...kindOf(match) };
    return { match, facts: finished ? [made, fact] : [fact] };
  }
  return undefined;
};
