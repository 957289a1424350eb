// Counts of kinds line by line, with what became of them in the line below: "14 bhs / 3 corsages / 1 crown / all made". They order nothing.

import { pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { isSingle } from '../text/token.ts';
import { doneWord } from './done-words.ts';
import { amountOf, pieceIn } from './made-facts.ts';

const counted = pattern('(-|:)? <n:count> (x|nos|pcs)? (<material>)? <p:piece> (,|-)?');
const finished = pattern(
  `(so|that's|thats|ok|and|these are|they're|theyre|they are|those are|which are)? (all|both|everything|the lot|all of them|all of these|everything's)? (is|are|now|been|just){0,2} (${doneWord})`,
);
const most = 12; // lines

// The list that begins with this part of the message, if one does.
const listAt = (
  { tokens, message: { parts } }: Reader,
  first: number,
): { readonly facts: readonly Unworded[]; readonly end: number } | undefined => {
  const facts: Unworded[] = [];
  for (let at = first; at < parts.length && at < first + most; at++) {
    const part = parts[at];
    if (part === undefined || part.asked || (at > first && tokens[part.start - 1]?.kind !== 'line')) return undefined;
    const line = counted.at(tokens, part.start, part.end);
    if (line?.end === part.end && isSingle(line.kept['n']?.number)) {
      facts.push({ fact: 'made', count: amountOf(line.kept['n']), ...pieceIn(line) });
      continue;
    }
    const match = facts.length === 0 ? undefined : finished.at(tokens, part.start, part.end);
    // "all made, in the fridge"; "all done in silk" tells what they are of.
    const rest = match === undefined ? [] : tokens.slice(match.end, part.end);
    const plain = rest.every(({ number, means }) => (number ?? means['piece'] ?? means['material'] ?? means['ingredient']) === undefined);
    return match !== undefined && plain ? { facts, end: match.end } : undefined;
  }
  return undefined;
};

export const finishedBelow = (reader: Reader): Finding[] =>
  finished.might(reader.tokens)
    ? reader.message.parts
        .slice(0, 40)
        .flatMap(({ start }, at) => {
          const list = listAt(reader, at);
          return list !== undefined && allFree(reader, start, list.end) ? [found(reader, start, list.end, list.facts)] : [];
        })
        .slice(0, 1)
    : [];
