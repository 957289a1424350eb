// Questions: "when do we start?", "what's left to make", "try 20 to 30". The whole sentence is taken, so that no number in it is ever stored.

import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import { looksAsked } from '../questions/looks-asked.ts';
import { details } from '../questions/question-details.ts';
import { questionForms } from '../questions/question-forms.ts';
import { shaped } from '../questions/shape.ts';
import { smallTalk, speaksOfTrade } from '../questions/small-talk.ts';
import type { Part } from '../text/message.ts';
import { taxAt } from './tax-basis.ts';

const defined = (fields: object): object => Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));

const longest = 40;

const readQuestion = (reader: Reader, part: Part): Finding => {
  const from = Math.max(part.start, part.end - longest);
  const said = reader.tokens
    .slice(from, part.end)
    .map((token) => token.text)
    .join(' ');
  const form = questionForms.find(
    (each) => each.pattern.in(reader.tokens, from, part.end) !== undefined && each.unless?.test(said) !== true,
  );
  const trade = speaksOfTrade(reader, from, part.end);
  if (!trade && (form === undefined || (form.asks !== 'events' && smallTalk(reader, from, part.end))))
    return { start: part.start, end: part.end };
  const asks = form?.asks ?? 'other';
  const basis = asks === 'taxStatus' ? undefined : basisIn(reader, from, part.end);
  const fields = shaped(reader, from, part.end, asks, details(reader, from, part.end));
  return found(reader, part.start, part.end, [{ fact: 'question', asks, ...defined({ ...fields, basis }) } as Unworded]);
};

const basisIn = (reader: Reader, start: number, end: number): string | undefined => {
  for (let index = start; index < end; index++) {
    const read = taxAt(reader, index);
    if (read !== undefined) return read.fact.basis;
  }
  return undefined;
};

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
