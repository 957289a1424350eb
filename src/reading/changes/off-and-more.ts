// "cancel all the hair flowers and make crowns 5": one kind is taken off, and what stands behind it is a change of its own. Either both are read or neither.

import type { PieceKind } from '../../handbook/pieces.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { kindNamed } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isSingle } from '../text/token.ts';
import { isRare } from './now-count-or-price.ts';

const off =
  '(scrap|scrub|drop|cancel|lose|remove|ditch|bin|delete|kill|nix|axe|pull|skip|take out|take off|leave out|forget|forget about|no more|get rid of|losing|dropping|cancelling|canceling)';
const lead =
  "(sorry|soz|ok|actually|oh|so|and|right|update|,|please|pls|they|she|he|bride|client|we|want|wants|wanted|said|to|now|just|can|you|lets|let's|decided){0,5}";
const first = pattern(
  `${lead} ${off} (the|any|all|all the|her|those|our){0,2} (of)? (the)? <p:piece> (now|please|pls|altogether|completely|entirely|at all)? (,|-|and|&|n|plus|\\+|then|but|also|instead|so){1,3}`,
);
const another = pattern(
  `(${off}|all|the|all the|also|both){0,2} <q:piece> (too|as well|also|please|pls|now|altogether|and all|are off|are gone|are cancelled)?`,
);
const soMany = pattern(
  '(make|have|do|set|put|change|move|take|bump|get|turn|bring)? (the|our|those)? <q:piece> (to|up to|<upTo>|down to|up|down|at|be|=|:|now|are|is|should be|go|goes){0,3} <n:count> (instead|please|pls|now|then|total|of them)?',
);
const none = (piece: PieceKind): Unworded => ({ fact: 'change', what: 'count', to: 0, piece });

const behind = (reader: Reader, part: Part, start: number): Unworded | undefined => {
  const { tokens } = reader;
  const also = another.at(tokens, start, part.end);
  const kind = kindNamed(also?.kept['q']);
  if (also?.end === part.end && kind !== undefined) return none(kind);
  const many = soMany.at(tokens, start, part.end);
  const [piece, number] = [kindNamed(many?.kept['q']), many?.kept['n']?.number];
  if (many?.end !== part.end || piece === undefined || !isSingle(number)) return undefined;
  // "drop the combs and make the crowns 65" may tell what one costs.
  return isRare(piece, Number(number.amount)) ? undefined : { fact: 'change', what: 'count', to: Number(number.amount), piece };
};

/** What is taken off and what is changed behind it; nothing where no more is said, held where it cannot be read. `read` reads a part. */
export const offAndMore = (reader: Reader, part: Part, read: (part: Part) => readonly Finding[]): readonly Finding[] | undefined => {
  const { tokens } = reader;
  const match = first.at(tokens, part.start, part.end);
  const piece = kindNamed(match?.kept['p']);
  if (match === undefined || piece === undefined || match.end >= part.end) return undefined;
  const rest = tokens.slice(match.end, part.end);
  if (!rest.some(({ number, means }) => number !== undefined || means['piece'] !== undefined)) return undefined;
  const more = behind(reader, part, match.end);
  if (more !== undefined) return [found(reader, part.start, part.end, [none(piece), more])];
  // "scrap the corsages and 2 bouts": two of them, or all but two.
  const bare = /^(and|&|n|plus|\+|also)$/.test(tokens[match.end - 1]?.text ?? '') && rest[0]?.number !== undefined;
  if (bare && !rest.some(({ text }) => text === 'instead')) return [{ start: part.start, end: part.end, held: true }];
  const findings = read({ ...part, start: match.end });
  if (findings.length > 0 && findings.every(({ facts }) => (facts?.length ?? 0) > 0))
    return [found(reader, part.start, match.end, [none(piece)]), ...findings];
  return rest.every(({ number }) => number === undefined) ? undefined : [{ start: part.start, end: part.end, held: true }];
};
