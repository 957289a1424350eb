// Some of what is ordered in another material: "10 of the bouts fresh", "half of them dried, the rest fresh", "can you do 5 of the lapels preserved".

import type { Material, PieceKind } from '../../handbook/pieces.ts';
import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';

const asked =
  "(so|and|ok|,|-|actually|can|could|would|you|we|i|please|pls|do|make|have|want|wants|they|they'd|she|he|she'd|like|let's|lets|bride|now|maybe|just|only|exactly|about|go|with|need|needs|may|be|to){0,7}";
const of = "(of)? (the|those|these|our|my|their|her|his|them|'em|em|all)?";
const some = `(<n:count> of (the|those|these|our|my|their|her|his|them|em)|half ${of}) (<count>)? (of them)?`;
const be =
  '(to be|are to be|should be|will be|need to be|want to be|being|are|is|be|go|going|come|in|as|done|made|want|wants|wanted){0,3} (all|in|with)?';
const rest = `(<x:role>|(the)? (others|other ones|remainder|remaining ones|other half|other <count>)|half|other half)`;
const material = '(<m:material>)';
const moves =
  "(so|and|ok|,|-|actually|can|could|would|you|we|i|please|pls|let's|lets|now|maybe|just){0,4} (move|moving|switch|switching|change|changing|swap|swapping|turn|convert|shift|put|take)";
const forms = [
  pattern(
    `${asked} ${some} (<p:piece>)? ${be} ${material} ((,|;|and|&|but|-|with|\\.|then|plus){0,2} ${rest} (of (them|the <piece>))? ${be} (<r:material>))? (please|pls|now|instead|though|if poss|if possible|thanks|ta){0,2}`,
  ),
  // without "of", the rest tells that it is no new order
  pattern(
    `${asked} <n:count> (of them)? (<p:piece>)? ${be} ${material} (,|;|and|&|but|-|with|then){0,2} ${rest} (of (them|the <piece>))? ${be} (<r:material>) (please|pls|now|instead|though){0,2}`,
  ),
  // "move 10 to dried", "switch half the bouts over to fresh": the verb tells that they are ordered already.
  pattern(
    `${moves} (the|those|these|her|our)? (<n:count>|half) ${of} (<count>)? (<p:piece>)? (over|across)? (to|into|for|over to|across to|in|as) (all)? ${material} (please|pls|now|instead|though|if poss|if possible|thanks|ta){0,2}`,
  ),
  // "move 10 bouts and 2 corsages to dried"
  pattern(
    `${moves} (the)? <n:count> <p:piece> (and|&|+|,|n|plus) (the)? <k:count> <q:piece> (over|across)? (to|into|for|over to|across to|in|as) (all)? ${material} (please|pls|now|instead){0,2}`,
  ),
  // "make 10 dried", "10 to dried": more than there are is refused, and nothing is kept where none are ordered.
  pattern(
    `${asked} <n:count> (<p:piece>)? (to|into|over to) (all)? ${material} (please|pls|now|instead|though|if poss|if possible|thanks|ta){0,2}`,
  ),
  pattern(
    `(ok|so|and|,|actually|can we|can you|could you|lets|let's|please|pls){0,3} (make|do|have) <n:count> (in|as|go|going)? ${material} (please|pls|now|instead|though){0,2}`,
  ),
];

const factsOf = ({ n, p, m, r, x, k, q }: Match['kept']): Unworded[] => {
  const kind = p?.means['piece'] as PieceKind | undefined;
  const piece = ofKind(kind);
  const to = m?.means['material'];
  const others = r?.means['material'];
  // "put 10 to dry" is work.
  if (m?.text === 'dry' || to === undefined || to === others || (x !== undefined && x.means['role'] !== 'rest')) return [];
  const some = n?.number === undefined ? 'half' : Number(n.number.amount);
  if (k?.number !== undefined)
    return [
      { fact: 'change', what: 'material', to, some, ...piece },
      { fact: 'change', what: 'material', to, some: Number(k.number.amount), ...ofKind(q?.means['piece'] as PieceKind | undefined) },
    ];
  return [{ fact: 'change', what: 'material', to, some, ...(others === undefined ? {} : { rest: others as Material }), ...piece }];
};

const inPart = (reader: Reader, { start, end }: Part): Finding[] => {
  for (const form of forms) {
    const match = form.at(reader.tokens, start, end);
    const facts = match?.end === end ? factsOf(match.kept) : [];
    const some = match?.kept['n']?.number;
    if (facts.length > 0) return !isRangeOrChoice(some) ? [found(reader, start, end, facts)] : [{ start, end, held: true }];
  }
  return [];
};

const find = (reader: Reader): Finding[] => reader.untouched().flatMap((part) => inPart(reader, part));

export const someInAMaterial: Phrase = {
  name: 'some in another material',
  examples: ['10 of the bouts fresh', 'half of them dried, the rest fresh'],
  find,
};
