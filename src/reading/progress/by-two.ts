// What two made: "Mere did 8 and I did 11 buttonholes", "dani did 11 bouts and i did 8" and "Ciara did 7, I did 9, all buttonholes" are of the kind that is named once.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';
import { isPerson } from './by-several.ts';
import { amountOf } from './made-facts.ts';

const did = "(has|'s|have|just|only|also){0,2} (did|done|made|finished|completed|knocked out|boxed|managed|got through|wired and boxed)";
const some = (count: string, kind: string): string => `<${count}:count> (of them)? (of the|of)? (<material>)? (<${kind}:piece>)?`;
const form = pattern(
  `(so|ok|today|,|between us|both){0,2} (the|my|our)? (<w:word>|<v:ingredient>|i've|i|we've) ${did} ${some('n', 'q')} ((,|and|&|n|plus|\\+|but|while|then|;|-){1,2} (the|my|our)? (<x:word>|<y:ingredient>|i've) ((${did}) (another)?)?|(the|my|our)? (<x:word>|<y:ingredient>|i've) ${did} (another)?) ${some('m', 'p')} (each)? ((,|-)? (all|both|all of them|both of us)? <r:piece>)? (today|so far|now|this morning|this arvo|this afternoon|between us|yesterday|tonight|,){0,2}`,
);

const bothIn = (reader: Reader, { start, end }: Part): Finding | undefined => {
  const match = form.at(reader.tokens, start, end);
  const { w, v, x, y, n, m, p, q, r } = match?.kept ?? {};
  if (match?.end !== end || [w ?? v, x ?? y].some((who) => who !== undefined && !isPerson(who))) return undefined;
  const first = (w ?? v)?.text ?? 'i';
  const unsure = [n, m].some((token) => isRangeOrChoice(token?.number));
  const each = reader.tokens.slice(start, end).some(({ means }) => means['each'] !== undefined);
  if (unsure || each || first === ((x ?? y)?.text ?? 'i')) return { start, end, held: true };
  const kinds = [kindOf(q ?? p ?? r), kindOf(p ?? r ?? q)] as const;
  const counts = [amountOf(n), amountOf(m)] as const;
  if (kinds[0].piece !== kinds[1].piece)
    return found(
      reader,
      start,
      end,
      kinds.map((kind, at) => ({ fact: 'made' as const, count: counts[at] ?? 0, ...kind })),
    );
  return found(reader, start, end, [{ fact: 'made', count: counts[0] + counts[1], ...kinds[0] }]);
};

export const byTwo = (reader: Reader): Finding[] =>
  form.might(reader.tokens) ? reader.untouched().flatMap((part) => (part.asked ? [] : (bothIn(reader, part) ?? []))) : [];
