// What the event is called: "event: harbour dance", "this is for the harbour dance".

import { dateAt } from '../dates/date-forms.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';

const forms = [
  pattern(
    "(the)? (event|title|wedding|party|job|name|event's|job's|events) (name|title|name is)? (:|=|is called|called|will be called|is named)",
  ),
  pattern('(the)? (event|job|thread|title) (name|title)? (is|-) (the)?'),
  pattern('(title|name) (is|-|:) (the)?'),
  pattern("(it's|its|it is|we're calling (it|this)|they're calling it|theyre calling it) called (the)?"),
  pattern('(name|title|label) (it|this one|this|the event|the thread|this thread|the job) (as)? (the)?'),
  pattern('rename (it|this one|this|the event|the thread|this thread|the job) (to|as)? (the)?'),
  pattern("(lets|let's|we'll|please|pls)? call (it|this one|this thread|this|the event|the job) (the)?"),
  pattern("(this (one)? is|this|this thread is|this one's|thread is|its|it's) for (the)?"),
  pattern('call (this one|this|it|the event) (the)?'),
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
        words.every((token) =>
          /^(the|a|event|wedding|party|us|me|today|one|off|on|done|ready|small|big|huge|tiny|local|confirmed|cancelled|postponed|moved|now|not|still|going|ahead|soon|outdoors|outside|inside|indoors|tbc)$/.test(
            token.text,
          ),
        )
      )
        continue;
      const { facts: _, ...place } = found(reader, match.start, end, []);
      return [{ ...place, facts: [{ fact: 'title', title: reader.words(match.end, end), words: reader.words(match.start, end) }] }];
    }
  }
  return [];
};

/** Whether a message opens by naming the event: its words are a name, whatever they say. */
export const opensTitle = (reader: Reader): boolean => forms.some((form) => form.at(reader.tokens, 0, reader.tokens.length) !== undefined);

export const eventTitle: Phrase = { name: 'event title', examples: ['event: harbour dance', 'this is for the harbour dance'], find };
