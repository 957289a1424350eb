// What is made, put right: "14/20 done. actually 13/20", "14 done, no wait 13". Only the second number counts. "scrap that, 9 finished" takes back what was counted before.

import { pattern } from '../pattern.ts';
import type { Unworded } from '../phrase.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import { brokenPutRight } from '../progress/broken-put-right.ts';
import { doneWord } from '../progress/done-words.ts';
import { loggedAs } from '../progress/logged-as.ts';
import { mayBeSaidDone, saidDone } from '../progress/said-done.ts';
import { workClauses } from '../progress/work-clauses.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';

const soft = "(,|-|\\.|oh|ah|it's|its|that's|thats|that was|it was|only|just|is|it){0,3}";
const strong =
  '(actually|no wait|wait|no|nope|nah|oops|whoops|sorry|soz|scratch that|scrap that|correction|or rather|rather|i mean|i meant|meant|should be|should say|typo|hang on|hold on|tell a lie|my bad)';
const many = '(<n:count> (of|out of|/) (the)? <m:count>|<s:slashed>|<n:count>)';
const share = '(<n:count> (of|out of|/) (the)? <m:count>|<s:slashed>)';
const ends = `(<p:piece>)? (are|is|now){0,1} (${doneWord})? (sorry|,|lol|now|soz|oops|my bad|actually){0,2}`;
// "make that 13/20", where "make it 12" may be what is wanted.
const right = pattern(`(${soft} (${strong} ${soft}){1,3} ${many}|${soft} (make that|make it) ${soft} ${share}) ${ends}`);

const plain = (fact: Unworded | undefined): fact is Extract<Unworded, { fact: 'made' }> =>
  fact?.fact === 'made' && fact.count !== undefined && fact.remade !== true && fact.fraction === undefined && fact.spares === undefined;

const joined = (reader: Reader, whole: Part): Finding | undefined => {
  const { tokens } = reader;
  for (let index = right.next(tokens, whole.start + 2, whole.end); index < whole.end; index = right.next(tokens, index + 1, whole.end)) {
    const match = right.at(tokens, index, whole.end);
    if (match?.end !== whole.end) continue;
    let end = index;
    while (end > whole.start && /^[,.;-]$/.test(tokens[end - 1]?.text ?? '')) end -= 1;
    const groups = workClauses(reader, { start: whole.start, end, asked: false });
    const [fact, second] = groups.flatMap((group) => group.facts);
    const { s, n, m, p } = match.kept;
    if (second !== undefined || !plain(fact)) continue;
    const [count = 0, of, third] = s?.number?.parts ?? [Number(n?.number?.amount), m === undefined ? undefined : Number(m.number?.amount)];
    const unsure = third !== undefined || isRangeOrChoice(n?.number);
    const kind = p?.means['piece'];
    // "14 bouts done, sorry 6 corsages" is another kind, "12/20 done, no 12/21" another whole.
    const others = (kind !== undefined && kind !== fact.piece) || (of !== undefined && of !== fact.of) || count === fact.count;
    if (unsure || others || (fact.of !== undefined && count > fact.of)) continue;
    const { all: _, ...rest } = fact;
    return found(reader, whole.start, whole.end, [{ ...rest, count, ...(count === fact.of ? { all: true as const } : {}) }]);
  }
  return undefined;
};

// "scrap that, 9 finished", "ignore my last tally, only 9 were finished": in place of the last count, not on top of it.
const told = '(i|we) (just)? (said|put|sent|wrote|typed|logged|gave|told|counted) (you|u|in)?';
const tally = '(tally|count|counts|number|numbers|total|figure|figures|one|message|msg|text|update|entry|score|lot)';
const takesBack = pattern(
  `(sorry|oops|no|nope|ok|actually|ah|wait|hang on|whoops|pls|please|,|-){0,3} (scrap|scratch|scrub|forget|ignore|disregard|strike|bin|delete) (what ${told}|(that|this|it|my|the|those|our){0,1} (last|previous|earlier|first|old)? ${tally} (${told})?|my last|the last|that|this|it) (before|earlier|just now|pls|please|sorry|now)? (,|-|:|;|\\.|and|its|it's|it is|was|there were|there are){0,3}`,
);
const onTop = /^(more|another|extra|other|spare|spares|others|further)$/;
const counts = pattern('<count>');
const inPlaceOf = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  const head = takesBack.at(tokens, part.start, part.end);
  if (head === undefined || counts.in(tokens, head.start, head.end) !== undefined) return undefined;
  const [fact, second] = workClauses(reader, { ...part, start: head.end }).flatMap(({ facts }) => facts);
  if (second !== undefined || !plain(fact) || fact.of !== undefined || fact.all === true) return undefined;
  if (tokens.slice(head.end, part.end).some(({ text }) => onTop.test(text))) return { start: part.start, end: part.end, held: true };
  const piece = fact.piece === undefined ? {} : { piece: fact.piece };
  return found(reader, part.start, part.end, [{ fact: 'change', what: 'made', to: fact.count ?? 0, ...piece }]);
};

const find = (reader: Reader): Finding[] => {
  const otherKind = loggedAs(reader);
  if (otherKind.length > 0) return otherKind;
  const broken = reader.untouched().flatMap((part) => brokenPutRight(reader, part) ?? []);
  if (broken.length > 0) return broken;
  const again = takesBack.might(reader.tokens)
    ? reader.untouched().flatMap((part) => (part.asked ? [] : (inPlaceOf(reader, part) ?? [])))
    : [];
  if (again.length > 0) return again;
  const said = mayBeSaidDone(reader) ? reader.untouched().flatMap((part) => (part.asked ? [] : (saidDone(reader, part) ?? []))) : [];
  if (said.length > 0) return said;
  if (!right.might(reader.tokens)) return [];
  const parts = reader.untouched().slice(0, 20);
  for (const [at, part] of parts.entries()) {
    const next = parts[at + 1];
    if (part.asked) continue;
    const one = joined(reader, part);
    if (one !== undefined) return [one];
    const both = next === undefined || next.asked || next.start - part.end > 3 ? undefined : joined(reader, { ...part, end: next.end });
    if (both !== undefined) return [both];
  }
  return [];
};

export const workPutRight: Phrase = { name: 'work put right', examples: [], find };
