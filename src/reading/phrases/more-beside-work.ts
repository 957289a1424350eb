// "12 bouts done need 6 more corsages": left to make, or more of the order? "12 bouts done, add 6 more corsages" adds them.

import type { PieceKind } from '../../handbook/pieces.ts';
import { countAndDone } from '../changes/count-and-done.ts';
import { wantedAdded } from '../changes/wanted-added.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import { doneWord } from '../progress/done-words.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';

const joint = '(,|-|;|and|but|so|still|now|then|also|just|pls|please|&|n){0,4}';
const unsure = pattern(
  `(${doneWord}) ${joint} (i|we|they|she|you)? (still|now|just|also|will|do|gonna)? ((need|needs|needing|want|wants|require|requires) ((another|an extra) (<count>)?|<count> (more|other|extra|further)) (<material>)? <piece>|<count> (more|other|extra|further) (<material>)? <piece> (wanted|needed|required|please|pls))`,
);
const added = pattern(
  `(${doneWord}) (,|-|;|and|but|so|now|then|also|just|pls|please|can you|&|n){1,4} (add|adding|chuck in|throw in|include|pop in|tack on|stick on) (another|on|in|an extra)? <n:count> (more|extra|further)? (<material>)? <p:piece>`,
);
// Where the work ends and the rest begins.
const done = pattern(`(${doneWord})`);

const endsOfWork = ({ tokens }: Reader, { start, end }: Part): number[] => {
  const ends: number[] = [];
  for (let index = done.next(tokens, start, end); index < end; index = done.next(tokens, index + 1, end)) {
    const match = done.at(tokens, index, end);
    if (match !== undefined) ends.push(match.end);
  }
  return ends;
};

const find = (reader: Reader): Finding[] => {
  const { tokens } = reader;
  const works = done.might(tokens);
  return reader.untouched().flatMap((part): Finding[] => {
    const wanted = part.asked ? undefined : wantedAdded(reader, part, works ? endsOfWork(reader, part) : []);
    if (wanted !== undefined) return [wanted];
    if (!works) return [];
    const changed = part.asked ? undefined : countAndDone(reader, part);
    if (changed !== undefined) return [changed];
    const more = part.asked ? undefined : added.in(tokens, part.start, part.end);
    const match = more ?? (part.asked ? undefined : unsure.in(tokens, part.start, part.end));
    if (
      match === undefined ||
      !tokens.slice(part.start, match.start).some(({ number, means }) => number !== undefined || means['piece'] !== undefined)
    )
      return [];
    const start = done.at(tokens, match.start, match.end)?.end ?? match.start;
    const [piece, number] = [more?.kept['p']?.means['piece'] as PieceKind | undefined, more?.kept['n']?.number];
    if (more === undefined || piece === undefined || piece === 'unspecified' || isRangeOrChoice(number))
      return [{ start, end: match.end, held: true }];
    return [found(reader, start, match.end, [{ fact: 'change', what: 'count', by: Number(number?.amount), piece }])];
  });
};

export const moreBesideWork: Phrase = { name: 'more beside work', examples: [], find };
