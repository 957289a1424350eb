// "they might want 4 crowns at 70" in a thread that holds pieces: nobody has ordered them. With a price it is worked out and not kept;
// without one it is asked whether they are ordered. Beside pieces of the same message it is held. In an empty thread it is an enquiry.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Fact } from '../fact.ts';
import { currencyFields } from '../order/read-order.ts';
import { firstIn, type Match, pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isSingle } from '../text/token.ts';

const who =
  "(they|she|he|we|i|(the)? (client|couple|planner|mob|customer|bridal party)|(the|her|his|their)? <role>|they're|theyre|she's|shes|he's|hes|we're|i'm|im|they are|she is|we are|are|is|were|was){0,3}";
const lead = '(ok|so|and|but|oh|also|plus|now|ps|fyi|heads up|then|,|:|-){0,3}';
const want =
  '(want|need|have|add|like|go for|order|take|get|do|fancy|ask for|book|be (wanting|needing|after|having|adding|ordering|getting)|end up (with|wanting|having)|come round to|throw in) (to)? (have|add|order|get|include)?';
const might = `(might|may|could well|might well|may well|possibly will|may possibly|might possibly) (also|even|just|still|now|yet|then)? ${want}`;
const mulling =
  '(thinking of|thinking about|thinking|toying with|considering|tempted by|mulling over|mulling|wondering about|undecided about|undecided on|in two minds about|hoping for) (also|about|of|maybe|perhaps)? (adding|having|getting|ordering|going for|doing|wanting)?';
const perhaps = '(possibly|perhaps|poss|maybe|potentially)';
const some =
  '(about|another|maybe|some|a further|perhaps)? (<n:count>|a|an) (<material>)? (<w:word>)? <p:piece> (too|as well|also|extra|on top)?';
const price = '((,)? (at|@|for)? <q:amount> (<each>|each one)?)?';
const closes = '(too|as well|also|not sure|not sure yet|unsure|tbc|undecided|no idea yet|will let you know|,|-){0,3}';
const forms = [
  `${lead} ${who} (${might}|${mulling}|${perhaps}) ${some} ${price} ${closes}`,
  `${lead} ${who} (want|wants|need|like)? ${some} ${price} (,|-)? (maybe|perhaps|possibly|is a maybe|are a maybe|is only a maybe|not sure yet|still undecided)`,
].map((source) => pattern(source));
// "20 bouts might be too many": that many are wanted by nobody.
const doubts = pattern(
  '<n:count> (<material>)? <p:piece> (might|may|could) (just)? be (a (bit|few|couple|tad|lot))? (too|over|more than|not)? (many|much|few|enough|generous|optimistic|plenty|over the top|overkill)',
);

const clauseEnds = /^([,.;!]|but|and)$/;
// "might need 3 more lapels": by how many it may change is held elsewhere.
const notKind = /^(more|extra|additional|further|fewer|less|of|the|other|spare|spares|another)$/;
const counted = /^(about|and|,|-|&|\+)$/;

const isCounted = ({ tokens }: Reader, { start, end }: Match): boolean =>
  tokens.some((token, index) => {
    if ((index >= start && index < end) || token.means['piece'] === undefined) return false;
    return [index - 1, index - 2].some(
      (at) => tokens[at]?.number !== undefined && (at < start || at >= end) && !counted.test(tokens[at]?.text ?? ''),
    );
  });

const tried = (reader: Reader, match: Match): Finding => {
  const piece = match.kept['p']?.means['piece'] as PieceKind;
  const [number, amount] = [match.kept['n']?.number, match.kept['q']?.number];
  const { start, end } = match;
  if ((number !== undefined && !isSingle(number)) || (amount !== undefined && !isSingle(amount))) return { start, end, held: true };
  const count = Number(number?.amount ?? 1);
  if (amount !== undefined)
    return found(reader, start, end, [
      { fact: 'question', asks: 'whatIf', piece, number: count, amount: amount.amount, ...currencyFields(amount) },
    ]);
  const words = reader.words(start, end);
  const order: Fact = { fact: 'pieces', piece, count, words };
  return { start, end, asks: [{ about: 'count', why: 'ordered or not', words, choices: [{ words: `order ${count}`, facts: [order] }] }] };
};

const findIn = (reader: Reader, part: Part): readonly Finding[] => {
  const { tokens } = reader;
  const { start, end } = part;
  const doubt = doubts.in(tokens, start, end);
  if (doubt !== undefined && allFree(reader, doubt.start, doubt.end)) return [{ start: doubt.start, end: doubt.end, held: true }];
  const match = firstIn(forms, tokens, start, end);
  if (match === undefined || !allFree(reader, match.start, match.end)) return [];
  if (notKind.test(match.kept['w']?.text ?? '')) return [];
  if (match.end < end && !clauseEnds.test(tokens[match.end]?.text ?? '')) return [];
  if (isCounted(reader, match)) return [{ start: match.start, end: match.end, held: true }];
  const open = reader.context.open;
  const answers = open?.kind === 'missing' && open.about === 'count';
  return reader.context.pieces.length === 0 || answers ? [] : [tried(reader, match)];
};

const find = (reader: Reader): Finding[] =>
  [...forms, doubts].some((form) => form.might(reader.tokens))
    ? reader.untouched().flatMap((part) => (part.asked ? [] : findIn(reader, part)))
    : [];

export const perhapsWanted: Phrase = { name: 'perhaps wanted', examples: [], find };
