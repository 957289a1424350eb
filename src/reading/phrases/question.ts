// Questions: "when do we start?", "what's left to make", "try 20 to 30". The whole sentence is taken, so that no number in it is ever stored.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import { looksAsked } from '../questions/looks-asked.ts';
import { details } from '../questions/question-details.ts';
import { questionForms } from '../questions/question-forms.ts';
import type { Part } from '../text/message.ts';
import { taxAt } from './tax-basis.ts';

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
