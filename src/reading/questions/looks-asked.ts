// Whether a sentence asks: by its question mark, its first words, or a command that asks without either ("buying list").

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { wordList } from '../words/word-list.ts';

const openers = new Set(
  wordList(`
  what, what's, wot's, wot, wots, whats, wats, wat, how, how's, hows, when, when's, whens, where, where's, wheres, who, who's, whos,
  which, why, do, does, did, are, is, can, could, should, would, will, shall, have, has, was, were, am, isnt, isn't, arent, aren't,
  anyone, anybody, any, anything, hw, wen, whatre, didnt, didn't, wouldnt, cant, what're, may
`),
);
const leadIns = new Set([
  'so',
  'hey',
  'and',
  'ok',
  'okay',
  'also',
  'sorry',
  'btw',
  'hi',
  'hello',
  'just',
  'but',
  'then',
  'oh',
  'um',
  'er',
  'eh',
  'right',
  ',',
  '-',
  'quick',
  'q',
  ':',
  'question',
  'please',
  'pls',
  'remind',
  'tell',
  'me',
  'us',
  'again',
  'now',
  'yo',
  'guys',
  'team',
  'folks',
  'lads',
  'bot',
  'can',
  'you',
  'anyone',
  'know',
  'do',
  'we',
  'morning',
  'wait',
  'sorry',
  'actually',
  'ah',
  'hang',
  'on',
  'one',
  'more',
  'thing',
  '"',
  'wondering',
  "i'm",
  'say',
  'to',
  'check',
  'checking',
  'just',
  'confirm',
  'hmm',
  'well',
  'any',
  'idea',
  'not',
  'sure',
  'chance',
  'love',
  'mate',
  'boss',
  'cuz',
  'eh',
  'bhai',
  'ji',
  'forgot',
]);
// Requests that look like questions: "can you make it 45".
const request = pattern(
  '(can|could|would|will) (you|u|ya|someone|we please) (please|pls|plz|just|also)? (make|change|update|add|put|bump|set|log|note|swap|drop|move|record|mark|take|knock|correct|fix|switch|remove|order|bring|get|grab|pass|check|price|quote|cost)',
);
// Commands that ask without a question word.
const commands = [
  'show (me)? (the|your|my|our|full)? (working|workings|sums|maths|math|calc|calcs|breakdown|client|price|event|order|calendar|plan|bench|list|summary|total|recipe)',
  'for the (client|customer)',
  '(client|customer) (version|copy)',
  '(buying|shopping|packing|order|market) list',
  '(open|upcoming|all|list|our|show) (open|upcoming|all)? (events|weddings)',
  'summary',
  'summarise',
  'recap',
  'status',
  'overview',
  'calendar',
  'remind me <any>{0,6}',
  'bench card',
  'board labels',
  'print (everything|all|the sheets)',
  'all sheets',
  'pin-on sheet',
  'try <number> (to|and|-) <number>',
  'try <number>',
  'try <number> <any>{0,6}',
  'price ladder',
  'ladder <any>{0,5}',
  'season',
  'review',
  'workings',
  'working',
  'remind me (what|when|how|which) <any>{0,8}',
  'need to know (what|when|how) <any>{0,8}',
  'what if <any>{0,8}',
  'stem budget <any>{0,6}',
  "(what's|whats) <any>{0,3} on the bench <any>{0,4}",
  'picture',
  'wearers',
  'breakdown',
  'on the bench <any>{0,3}',
  '(latest|earliest) <any>{0,6}',
  'how <any>{0,8}',
  'time per <any>{0,4}',
  '(remaining|left to make|due today|due tomorrow|total|price|recipe|margin)',
  '(price|total|cost|budget|count|date|tax|stems|bench|start) (again|check)',
].map((source) => pattern(source));

const openAt = (reader: Reader, part: Part): number => {
  let index = part.start;
  while (index < part.end && leadIns.has(reader.tokens[index]?.text ?? '') && !isOpener(reader, index, part)) index += 1;
  return index;
};

const isOpener = (reader: Reader, index: number, part: Part): boolean => {
  const token = reader.tokens[index];
  if (token === undefined || token.kind !== 'word' || !openers.has(token.text)) return false;
  const next = reader.tokens[index + 1];
  // "can you tell me how many", "do we know when": the real question comes later.
  if (
    /^(do|can|could|would)$/.test(token.text) &&
    /^(you|u)$/.test(next?.text ?? '') &&
    /^(tell|remind|show|know|say|check)$/.test(reader.tokens[index + 2]?.text ?? '')
  )
    return index + 3 >= part.end;
  if (/^(do|did|have|has|is|are|was|can|could|would|will|should|shall|were|does|am|may)$/.test(token.text)) {
    if (part.asked) return true;
    if (
      next?.number !== undefined ||
      next?.means['piece'] !== undefined ||
      next?.means['taxName'] !== undefined ||
      next?.means['material'] !== undefined
    )
      return /^(is|are|will|can|does|would)$/.test(token.text);
    return (
      next !== undefined &&
      /^(we|i|you|u|they|it|he|she|the|this|that|there|these|those|my|our|all|anyone|any|us|it's|everyone|her|his|their|ye|yous|y'all|someone)$/.test(
        next.text,
      )
    );
  }
  return true;
};

/** Requests ("can you make it 45") are not questions. */
export const looksAsked = (reader: Reader, part: Part): boolean => {
  if (request.in(reader.tokens, part.start, Math.min(part.end, part.start + 6)) !== undefined) return false;
  const start = openAt(reader, part);
  if (isOpener(reader, start, part)) return !/^(any|anything|may)$/.test(reader.tokens[start]?.text ?? '') || part.asked;
  return commands.some((command) => {
    const match = command.at(reader.tokens, start, part.end);
    return match !== undefined && (part.asked || match.end >= part.end - 2);
  });
};
