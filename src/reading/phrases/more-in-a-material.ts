// "3 more fresh", "another 2 dried bouts", "4 more corsages in dried": more of the order in a material of their own, and nothing becomes of the others.

import type { Material, PieceKind } from '../../handbook/pieces.ts';
import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';

const asked =
  "(so|and|ok|,|-|actually|can|could|you|we|i|please|pls|do|make|have|want|wants|they|they'd|she|he|like|let's|lets|bride|now|need|needs|add|plus|with|to|also|oh){0,6}";
const end = '(ones)? (please|pls|now|too|as well|thanks|ta){0,2}';
const forms = [
  pattern(`${asked} <n:count> (more|extra) (in)? <m:material> (<p:piece>)? ${end}`),
  pattern(`${asked} (another|an extra) <n:count> (in)? <m:material> (<p:piece>)? ${end}`),
  pattern(`${asked} <n:count> (more|extra) <p:piece> (in)? <m:material> ${end}`),
  pattern(`${asked} another <n:count> <p:piece> (in)? <m:material> ${end}`),
];

const inPart = (reader: Reader, { start, end, asked: isQuestion }: Part): Finding[] => {
  const match = isQuestion ? undefined : firstAt(forms, reader.tokens, start, end);
  const { n, m, p } = match?.kept ?? {};
  const material = m?.means['material'] as Material | undefined;
  if (match?.end !== end || n?.number === undefined || material === undefined || m?.text === 'dry') return [];
  if (isRangeOrChoice(n.number)) return [{ start, end, held: true }];
  const piece = (p?.means['piece'] ?? 'unspecified') as PieceKind;
  return [found(reader, start, end, [{ fact: 'pieces', piece, count: Number(n.number.amount), material, adds: true }])];
};

const find = (reader: Reader): Finding[] => reader.untouched().flatMap((part) => inPart(reader, part));

export const moreInAMaterial: Phrase = { name: 'more in a material', examples: [], find };
