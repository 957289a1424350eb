// What two made, the kind named once behind them both: "Mere did 8 and I did 11 buttonholes" is nineteen buttonholes.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isPerson } from './by-several.ts';
import { amountOf, kindOf } from './made-facts.ts';

const did = "(has|'s|have|just|only|also){0,2} (did|done|made|finished|completed|knocked out|boxed|managed|got through|wired and boxed)";
const form = pattern(
  `(so|ok|today|,|between us|both){0,2} (<w:word>|<v:ingredient>|i've|i|we've) ${did} <n:count> (of them)? (,|and|&|n|plus|\\+|but|while|then){1,2} (<x:word>|<y:ingredient>|i've) ((${did}) (another)?)? <m:count> (of the|of)? (<material>)? <p:piece> (each)? (today|so far|now|this morning|this arvo|this afternoon|between us|yesterday|tonight|,){0,2}`,
);

const bothIn = (reader: Reader, { start, end }: Part): Finding | undefined => {
  const match = form.at(reader.tokens, start, end);
  const { w, v, x, y, n, m, p } = match?.kept ?? {};
  if (match?.end !== end || [w ?? v, x ?? y].some((who) => who !== undefined && !isPerson(who))) return undefined;
  const first = (w ?? v)?.text ?? 'i';
  const unsure = [n, m].some((token) => token?.number?.max !== undefined || token?.number?.or !== undefined);
  const each = reader.tokens.slice(start, end).some(({ means }) => means['each'] !== undefined);
  if (unsure || each || first === ((x ?? y)?.text ?? 'i')) return { start, end, held: true };
  return found(reader, start, end, [{ fact: 'made', count: amountOf(n) + amountOf(m), ...kindOf(p) }]);
};

export const byTwo = (reader: Reader): Finding[] =>
  form.might(reader.tokens) ? reader.untouched().flatMap((part) => (part.asked ? [] : (bothIn(reader, part) ?? []))) : [];
