// "9 bouts and a crown done at 4.15": behind a word for finished a number written like a clock's is the hour, unless it is said to be a price.

import { changed, type Token } from './token.ts';

const finished = /^(done|finished|made|ready|boxed|completed|complete|wrapped|wired|taped|started|start|finish|stopped|off|up)$/;
const leads = /^(at|by|around|about|till|until)$/;
const clock = /^(1[0-2]|[1-9])\.([0-5]\d)$/;
const priced = ['each', 'all', 'piece', 'included', 'onTop', 'taxName', 'taxWord', 'budget', 'upTo'];
const prices = /^(a|per|\/|x|quid|pounds|euros|euro|dollars|rand|rs|and|plus|ex|for)$/;

const isHour = (tokens: readonly Token[], index: number): boolean => {
  const token = tokens[index];
  if (token?.number?.form !== 'plain' || !clock.test(token.text) || !leads.test(tokens[index - 1]?.text ?? '')) return false;
  if (!finished.test(tokens[index - 2]?.text ?? '')) return false;
  const next = tokens[index + 1];
  return next === undefined || (!prices.test(next.text) && priced.every((tag) => next.means[tag] === undefined));
};

export const withHoursOfWork = (tokens: readonly Token[]): readonly Token[] =>
  tokens.some((_, index) => isHour(tokens, index))
    ? tokens.map((token, index) => {
        const parts = isHour(tokens, index) ? clock.exec(token.text) : null;
        if (parts === null) return token;
        return changed(token, { number: { form: 'time', amount: '', parts: [Number(parts[1]), Number(parts[2])], vague: 'time of day' } });
      })
    : tokens;
