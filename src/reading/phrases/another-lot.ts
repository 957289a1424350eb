// "also 3 kids buttonholes at 8" where buttonholes are ordered: a second lot at a price of its own beside the first, never in its place.
// Without "also" a word for another sort of the kind may say as much, or all there are now: it is asked.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Fact } from '../fact.ts';
import { currencyFields } from '../order/read-order.ts';
import { firstIn, type Match, pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import type { Choice } from '../reading.ts';
import { kindNamed } from '../text/kind-named.ts';
import { isSingle } from '../text/token.ts';

const sort =
  "(kids|kid's|kids'|kiddy|kiddie|childs|child's|children's|childrens|child|mini|minis|small|smaller|little|tiny|baby|junior|toddler|large|larger|big|bigger|posh|fancy|fancier|premium|deluxe|luxury|simple|simpler|plain|basic|budget|cheap|cheaper)";
const also = '(also|plus|and also|oh and|as well as that|as well|on top of that|and|then|&|\\+)';
const lead =
  "(ok|so|oh|sorry|hi|,|-|:|they want|she wants|we need|need|needs|want|wants|do|can we have|can you do|there are|theres|there's){0,4}";
const cost = '(,|-)? (at|@|for)? <q:amount> (<each>|each one)?';
const polite = '(please|pls|too|as well|also|thanks|ta|,){0,2}';
const forms = [
  `${lead} ${also} ${lead} <n:count> (<k:word>)? <p:piece> (for (the|her|his|their) <any>{1,2})? ${polite} ${cost} ${polite}`,
  `${lead} <n:count> <s:word> <p:piece> (as well|also|too)? ${cost} ${polite}`,
].map((source) => pattern(source));
const ofSort = pattern(sort);
const notSort = /^(more|extra|additional|further|of|the|other|less|fewer|spare|another)$/;

const lotOf = (reader: Reader, match: Match, second: boolean): readonly Finding[] => {
  const { n, p, q, k, s } = match.kept;
  const piece: PieceKind | undefined = kindNamed(p);
  const word = s ?? k;
  const at = word === undefined ? -1 : reader.tokens.indexOf(word, match.start);
  if (piece === undefined || !reader.context.pieces.includes(piece) || !isSingle(n?.number) || !isSingle(q?.number)) return [];
  // "also 3 dried bouts at 8" and "3 more bouts" are read elsewhere.
  if (word !== undefined && (word.means['material'] !== undefined || notSort.test(word.text))) return [];
  if (second && ofSort.at(reader.tokens, at, at + 1) === undefined) return [];
  const count = Number(n.number.amount);
  const price = { fact: 'price', amount: q.number.amount, per: 'each', ...currencyFields(q.number), piece } as const;
  const added: Unworded[] = [{ fact: 'change', what: 'count', by: count, piece }, price];
  if (!second) return [found(reader, match.start, match.end, added)];
  const words = reader.words(match.start, match.end);
  const choice = (say: string, facts: readonly Unworded[]): Choice => ({
    words: `${count} ${say}`,
    facts: facts.map((fact) => ({ ...fact, words }) as Fact),
  });
  const choices = [choice('more', added), choice('in all', [{ fact: 'pieces', piece, count }, price])];
  return [{ start: match.start, end: match.end, asks: [{ about: 'count', why: 'which number', words, choices }] }];
};

const find = (reader: Reader): Finding[] => {
  if (reader.context.pieces.length === 0 || !forms.some((form) => form.might(reader.tokens))) return [];
  return reader.untouched().flatMap((part): readonly Finding[] => {
    const match = part.asked ? undefined : firstIn(forms, reader.tokens, part.start, part.end);
    if (match?.start !== part.start || match.end !== part.end || !allFree(reader, match.start, match.end)) return [];
    return lotOf(reader, match, match.kept['s'] !== undefined);
  });
};

export const anotherLot: Phrase = { name: 'another lot', examples: [], find };
