// What the event is called: "event: harbour dance", "this is for the harbour dance".

import { dateAt } from '../dates/date-forms.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';

const forms = [
  pattern('(event|title|wedding|party|job|name) (name|title)? (:|=|is called|called)'),
  pattern("(this (one)? is|this|this thread is|this one's|thread is|its|it's) for (the)?"),
  pattern('call (this|it|the event|this one) (the)?'),
];
const stop = /^(,|\.|;|\(|-|on|at|with|who)$/;

const find = (reader: Reader): Finding[] => {
  for (const part of reader.message.parts.slice(0, 5)) {
    for (const form of forms) {
      const match = form.at(reader.tokens, part.start, part.end);
      if (match === undefined || !reader.free(match.start)) continue;
      let end = match.end;
      while (
        end < part.end &&
        !stop.test(reader.tokens[end]?.text ?? '') &&
        reader.tokens[end]?.number === undefined &&
        dateAt(reader.tokens, end, reader.context) === undefined &&
        reader.free(end)
      )
        end += 1;
      const words = reader.tokens.slice(match.end, end);
      if (
        words.length === 0 ||
        words.length > 8 ||
        words.some((token) => token.means['piece'] !== undefined || token.means['material'] !== undefined) ||
        words.every((token) => /^(the|a|event|wedding|party|us|me|today|one)$/.test(token.text))
      )
        continue;
      const { facts: _, ...place } = found(reader, match.start, end, []);
      return [{ ...place, facts: [{ fact: 'title', title: reader.words(match.end, end), words: reader.words(match.start, end) }] }];
    }
  }
  return [];
};

export const eventTitle: Phrase = { name: 'event title', examples: ['event: harbour dance', 'this is for the harbour dance'], find };
