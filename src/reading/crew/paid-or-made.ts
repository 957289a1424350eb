// "jo at 12 an hour": paid it, or making that many; asked.

import { pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Choice } from '../reading.ts';
import type { Part } from '../text/message.ts';
import { isSingle } from '../text/token.ts';
import { payWord } from './crew-forms.ts';

export const askPaidOrMade = (reader: Reader, { start, end }: Part, rate: number, wage: object | undefined): Finding => {
  const words = reader.words(start, end);
  const choices: Choice[] = [
    { words: `paid ${rate} an hour`, facts: [{ fact: 'crew', ...wage, words }] },
    { words: `makes ${rate} an hour`, facts: [{ fact: 'crew', piecesPerHour: rate, words }] },
  ];
  return { start, end, asks: [{ about: 'count', why: 'which number', words, choices }] };
};

// "3 of us, 4 hrs each, 15 an hour": our own hands may be paid it or make that many; so may juniors on a day. What is bought in with "at" is paid.
const bareRate = pattern('(,|;|-|\\.|and|&|n) (about|around|roughly|say)? <r:plain> (an|per|a|/) (/)? (hour|hr|h)');
const ours = /^(of us|us|me|myself|i|we)$/;
/** The bare rate an hour that may be either; undefined where it is sure. */
export const doubtfulRate = ({ tokens }: Reader, { start, end }: Part, wage: string | undefined, paced: boolean): number | undefined => {
  const match = bareRate.might(tokens) ? bareRate.in(tokens, start, end) : undefined;
  const number = match?.kept['r']?.number;
  const words = tokens.slice(start, end);
  if (!isSingle(number) || /[.,]/.test(number.amount)) return undefined;
  if (words.some(({ text, means }) => payWord.test(text) || means['piece'] !== undefined)) return undefined;
  const own = wage === number.amount && words.some(({ text }) => ours.test(text));
  return own || (wage === undefined && !paced) ? Number(number.amount) : undefined;
};

/** Whether they are paid it or make it, beside all else that is told of them. */
export const askOfRate = (reader: Reader, finding: Finding, rate: number): Finding => {
  const { start, end, facts = [] } = finding;
  // Beside a day the question would be taken for one about the day: the sentence is held.
  if (facts.some((fact) => fact.fact === 'crew' && fact.date !== undefined)) return { start, end, held: true };
  const words = reader.words(start, end);
  const told = (own: object): Choice['facts'] =>
    facts.map((fact) => {
      if (fact.fact !== 'crew') return { ...fact, words };
      const { wage: _, ...rest } = fact;
      return { ...rest, ...own, words };
    });
  const choices: Choice[] = [
    { words: `paid ${rate} an hour`, facts: told({ wage: String(rate) }) },
    { words: `makes ${rate} an hour`, facts: told({ piecesPerHour: rate }) },
  ];
  return { start, end, asks: [{ about: 'count', why: 'which number', words, choices }] };
};
