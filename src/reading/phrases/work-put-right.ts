// What is made, put right in the same breath: "14/20 done. actually 13/20", "14 done, no wait 13". Only the second number counts.

import { pattern } from '../pattern.ts';
import type { Unworded } from '../phrase.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import { doneWord } from '../progress/done-words.ts';
import { loggedAs } from '../progress/logged-as.ts';
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

const find = (reader: Reader): Finding[] => {
  const otherKind = loggedAs(reader);
  if (otherKind.length > 0) return otherKind;
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
