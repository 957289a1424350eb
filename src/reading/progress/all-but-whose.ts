// All but one, named by whose it is or what: "everything's boxed bar the groom's", "all done except the bride's halo", "just the halo not done".

import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import type { Token } from '../text/token.ts';
import { isPlural } from '../wearers/role-counts.ts';
import { doneWord } from './done-words.ts';

const opens = "(ok|okay|right|so|and|well|yay|phew|update|now|,|-|:|just|got|have|we've|weve|i've|ive){0,3}";
const all =
  "(everything|everything's|everythings|all|all of them|all of it|the lot|the lot's|they're all|theyre all|they are all|every one|every single one|it's all|its all|(all|everyone's|everybody's|all of)? (the|our)? <piece>)";
const done = `(is|are|'s|has been|have been|been|all|now|up|both){0,3} (${doneWord}) (up|now|today)?`;
const but = '(,|-)? (except for|except|bar|barring|but for|but|apart from|aside from|other than|excluding|minus|save for|save)';
const one =
  "(the|his|her|my|our|one for)? (single|last|one)? ((<w:owner>|<w:role> 's) (one|<p:piece>)?|the? <p:piece>|<x:word> (one|<p:piece>)?)";
const ends = "(now|left|to do|to go|still|yet|which|is|i'll|doing|next|tho|though|that's left|thats left){0,3}";
const forms = [`${opens} ${all} ${done} ${but} ${one} ${ends}`, `${opens} ${all} ${but} ${one} ${done}`].map((source) => pattern(source));

const several = ({ text, means }: Token): boolean =>
  means['owner'] === undefined && means['role'] !== undefined ? isPlural(text) : /[^s]s$/.test(text) && means['owner'] === undefined;

const oneIn = (reader: Reader, { start, end, asked }: Part): Finding | undefined => {
  const match = asked ? undefined : firstAt(forms, reader.tokens, start, end);
  if (match === undefined) return undefined;
  const rest = reader.tokens.slice(match.end, end);
  if (rest.length > 0 && !/^(,|-|;|cos|coz|because|as|\()$/.test(rest[0]?.text ?? '')) return undefined;
  // "… bar the bride's halo, 12 all up"
  if (rest.some(({ number, means }) => number !== undefined || means['piece'] !== undefined)) return { start, end, held: true };
  const { w, p, x } = match.kept;
  if (x !== undefined && !x.text.endsWith("'s")) return undefined; // "all done bar the delivery"
  const named = reader.tokens.slice(match.start, match.end).findLast((token) => token === w || token === p || token === x);
  if (named === undefined) return undefined;
  // "bar the ushers' bouts": how many they are is not said.
  if ([w, p].some((token) => token !== undefined && several(token))) return { start, end, held: true };
  return found(reader, start, end, [{ fact: 'left', count: 1, ...kindOf(p) }]);
};

/** The one that is left where all the rest is finished. */
export const allButOne = (reader: Reader): Finding[] =>
  forms.some((form) => form.might(reader.tokens)) ? reader.untouched().flatMap((part) => oneIn(reader, part) ?? []) : [];
