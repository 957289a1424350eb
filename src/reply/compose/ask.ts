// A question back: the sentence, then its choices to tap or to type.

import type { Ask, Choice } from '../../reading/reading.ts';
import { parseDay } from '../../values/day.ts';
import type { Manner } from '../answer.ts';
import type { Block } from '../reply.ts';
import { joined, text } from '../span.ts';
import { askLine } from '../words/asks.ts';
import { fullDate } from '../words/dates.ts';
import { factWords } from '../words/facts.ts';
import { inOwnWord } from '../words/names.ts';

/** A choice of a date is shown as dates are everywhere, whatever words the reader gave it. */
const labelOf = ({ why }: Ask, choice: Choice, manner: Manner): string => {
  // "2 or 3 of us in friday": the day is the same in both.
  const words = inOwnWord(choice.words, manner.says);
  if (why === 'low or high' || why === 'part left') return words;
  const days = new Set(
    choice.facts.flatMap((fact) => (fact.fact === 'date' || fact.fact === 'crew' ? (parseDay(fact.date ?? '') ?? []) : [])),
  );
  return days.size > 0 ? [...days].map((day) => fullDate(day, manner)).join(' and ') : words;
};

const mostInLine = 3; // facts; more are easier checked one below the other

/** What would be kept of a message that was read in part. */
const partRead = ({ why, choices }: Ask, manner: Manner): readonly Block[] => {
  const facts = why === 'part left' ? (choices[0]?.facts ?? []) : [];
  if (facts.length === 0) return [];
  const read = facts.map((fact) => factWords(fact, manner));
  if (read.length > mostInLine) return [{ block: 'list', title: text`Read:`, items: read }];
  return [{ block: 'line', line: text`Read: ${joined(read, '; ')}.` }];
};

export const askBlocks = (ask: Ask, manner: Manner): readonly Block[] => [
  ...partRead(ask, manner),
  { block: 'next', line: askLine(ask) },
  ...(ask.choices.length > 0
    ? [
        {
          block: 'actions' as const,
          actions: ask.choices.map((choice, index) => ({
            label: labelOf(ask, choice, manner),
            action: 'choose' as const,
            value: String(index),
          })),
        },
      ]
    : []),
];
