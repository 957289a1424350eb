// Questions: "when do we start?", "what's left to make", "try 20 to 30". The whole sentence is taken, so that no number in it is ever stored.

import type { PieceKind } from '../../handbook/pieces.ts';
import { dateAt } from '../dates/date-forms.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { wordList } from '../words/word-list.ts';
import { questionForms } from './question-forms.ts';
import { taxAt } from './tax-basis.ts';

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

const looksAsked = (reader: Reader, part: Part): boolean => {
  if (request.in(reader.tokens, part.start, Math.min(part.end, part.start + 6)) !== undefined) return false;
  const start = openAt(reader, part);
  if (isOpener(reader, start, part)) return !/^(any|anything|may)$/.test(reader.tokens[start]?.text ?? '') || part.asked;
  return commands.some((command) => {
    const match = command.at(reader.tokens, start, part.end);
    return match !== undefined && (part.asked || match.end >= part.end - 2);
  });
};

const details = (reader: Reader, start: number, end: number) => {
  const { tokens } = reader;
  let piece: PieceKind | undefined;
  let item: string | undefined;
  let number: number | undefined;
  let numberMax: number | undefined;
  let amount: string | undefined;
  let amountMax: string | undefined;
  let date: string | undefined;
  for (let index = start; index < end; index++) {
    const token = tokens[index];
    if (token === undefined) continue;
    const kind = token.means['piece'] as PieceKind | undefined;
    if (kind !== undefined && kind !== 'unspecified') piece ??= kind;
    item ??= token.means['ingredient'];
    const read = date === undefined ? dateAt(tokens, index, reader.context) : undefined;
    if (
      read !== undefined &&
      read.days.length >= 1 &&
      (read.days.length === 1 || read.dayOnly !== undefined) &&
      read.end <= end &&
      (read.relative === true || read.end > index + 1 || token.number?.form === 'slashed')
    ) {
      date = read.days.find((day) => day > reader.context.today || read.days.length === 1);
      index = read.end - 1;
      continue;
    }
    if (token.number?.form === 'plain') {
      if (number === undefined && /^\d+$/.test(token.number.amount)) {
        number = Number(token.number.amount);
        if (token.number.max !== undefined && /^\d+$/.test(token.number.max)) numberMax = Number(token.number.max);
      }
      const priced =
        tokens[index - 1]?.text === 'at' ||
        tokens[index - 1]?.text === '@' ||
        tokens[index + 1]?.means['each'] !== undefined ||
        !/^\d+$/.test(token.number.amount);
      if (priced) amount ??= token.number.amount;
      else if (token.number.max !== undefined) {
        amount ??= token.number.amount;
        amountMax ??= token.number.max;
      }
    } else if (token.number?.form === 'money') {
      if (amount === undefined) amountMax = token.number.max;
      amount ??= token.number.amount;
    }
  }
  return { piece, item, number, numberMax, amount, amountMax, date };
};

const defined = (fields: object): object => Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));

const longest = 40;
const tradeTags = ['piece', 'taxName', 'material'];

const readQuestion = (reader: Reader, part: Part): Finding => {
  const from = Math.max(part.start, part.end - longest);
  const form = questionForms.find((each) => each.pattern.in(reader.tokens, from, part.end) !== undefined);
  const trade = reader.tokens.slice(from, part.end).some((token) => tradeTags.some((tag) => token.means[tag] !== undefined));
  if (form === undefined && !trade) return { start: part.start, end: part.end };
  const asks = form?.asks ?? 'other';
  if (!trade && talk(reader, from, part.end)) return { start: part.start, end: part.end };
  const sums = asks === 'countFor' ? countForSums(reader, from, part.end) : undefined;
  const basis = asks === 'taxStatus' ? undefined : basisIn(reader, from, part.end);
  return found(reader, part.start, part.end, [
    {
      fact: 'question',
      asks,
      ...defined(shaped(asks, { ...details(reader, from, part.end), ...sums, basis }, stepIn(reader, from, part.end))),
    } as Unworded,
  ]);
};

// "how many at 25 for 600": 25 is the price each, 600 what there is to spend.
const countForSums = (
  reader: Reader,
  start: number,
  end: number,
): { amount: string | undefined; amountMax: string | undefined; number: undefined } => {
  let each: string | undefined;
  let budget: string | undefined;
  for (let index = start; index < end; index++) {
    const number = reader.tokens[index]?.number;
    if (number === undefined || (number.form !== 'money' && number.form !== 'plain')) continue;
    const priced =
      /^(at|@)$/.test(reader.tokens[index - 1]?.text ?? '') ||
      reader.tokens[index + 1]?.means['each'] !== undefined ||
      reader.tokens[index + 1]?.text === 'per';
    if (priced) each ??= number.amount;
    else budget ??= number.amount;
  }
  return { amount: each, amountMax: budget, number: undefined };
};

const stepForm = pattern('(by|in|step|steps|in steps of|steps of|every) (steps of|ones of)? <n:amount>');
const stepIn = (reader: Reader, start: number, end: number): string | undefined =>
  stepForm.in(reader.tokens, start, end)?.kept['n']?.number?.amount;

const shaped = (asks: string, fields: Readonly<Record<string, unknown>>, step: string | undefined): object => {
  if (asks === 'away') return { ...fields, number: undefined, people: fields['number'] ?? 1 };
  return asks === 'ladder' && step !== undefined ? { ...fields, step } : fields;
};

const basisIn = (reader: Reader, start: number, end: number): string | undefined => {
  for (let index = start; index < end; index++) {
    const read = taxAt(reader, index);
    if (read !== undefined) return read.fact.basis;
  }
  return undefined;
};

// Questions of the day that are no business of the bench.
const talkWords =
  /^(lunch|coffee|tea|needle|keys|key|van|vans|car|park|parking|weather|wifi|password|phone|charger|holiday|weekend|dinner|snips|scissors|glue|gun|bin|bins|door|code|kettle|milk|cake|dog|kids|shop|toilet|loo|heating|invoice|rent|landlord|cooler|fridge|umbrella|birthday|football|game|train|bus|coming|lift|pizza|hoover|broom|apron|address|postcode|lights|alarm|radio|playlist|biscuits|plaster|plasters|takeaway|chips|sandwich|cuppa|pub|beer)$/;
const talk = (reader: Reader, start: number, end: number): boolean =>
  reader.tokens.slice(start, end).some((token) => token.kind === 'word' && talkWords.test(token.text));

const find = (reader: Reader): Finding[] => {
  const findings: Finding[] = [];
  for (const part of reader.untouched()) {
    if (findings.length >= 8) break;
    if (looksAsked(reader, part)) findings.push(readQuestion(reader, part));
  }
  return findings;
};

export const question: Phrase = {
  name: 'question',
  examples: [
    'when do we start?',
    'what do I spend?',
    "what's left to make",
    'try 20 to 30',
    'can we do 22?',
    'show working',
    'buying list',
  ],
  find,
};
