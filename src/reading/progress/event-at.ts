// What a place in a sentence about the work tells: a count, a kind, what became of them, a word that joins.

import { beginsAt, firstAt, type Match } from '../pattern.ts';
import type { Token } from '../text/token.ts';
import type { Event } from './event.ts';
import { shareForms, shareSaid } from './share-forms.ts';
import { isNamed } from './what-follows.ts';
import { wholeAhead, wholeOpens } from './whole-ahead.ts';
import {
  both,
  counted,
  couple,
  joins,
  kindFirst,
  named,
  noneForms,
  ofAll,
  quiet,
  reaching,
  reachingIf,
  share,
  single,
  type Told,
  target,
  toldForms,
  whole,
  wholeWord,
} from './work-forms.ts';

const moreWord = /^(another|more|further)$/;
const freshWord = /^(new|fresh|replacement)$/;
/** What a match tells. */
export const at = (match: Match, told: Told, more: Partial<Event> = {}): Event => ({ told, start: match.start, end: match.end, ...more });
const kindIn = (match: Match): { kind?: Token } => (match.kept['p'] === undefined ? {} : { kind: match.kept['p'] });
export const amount = (token: Token | undefined): number => Number(token?.number?.amount);

const countAt = (tokens: readonly Token[], index: number, end: number, kindsFirst: boolean): Event | 'unsure' | undefined => {
  const first = kindsFirst ? kindFirst.at(tokens, index, end) : undefined;
  if (first !== undefined) return at(first, 'count', { count: amount(first.kept['n']), ...kindIn(first) });
  const part = share.at(tokens, index, end);
  if (part !== undefined) {
    const [count = 0, of = 0, third] = part.kept['s']?.number?.parts ?? [amount(part.kept['n']), amount(part.kept['m'])];
    // "2/3 done" may be two thirds.
    const mayBeShare = of <= 4 && part.kept['s'] !== undefined && part.kept['p'] === undefined;
    return third !== undefined || of < count || mayBeShare
      ? 'unsure'
      : at(part, 'count', { count, of, ...kindIn(part), ...(part.kept['s'] === undefined ? {} : { slashed: true }) });
  }
  if (tokens[index]?.number !== undefined && isNamed(tokens, index)) return 'unsure';
  const many = counted.at(tokens, index, end);
  const number = many?.kept['n']?.number;
  if (many !== undefined && number !== undefined)
    return number.max !== undefined ||
      number.or !== undefined ||
      (/^(each|at|@)$/.test(tokens[many.end]?.text ?? '') && quiet.at(tokens, many.end, end) === undefined)
      ? 'unsure'
      : at(many, 'count', {
          count: Number(number.amount),
          ...kindIn(many),
          ...(tokens[many.start]?.text === 'all' ? { all: true } : {}),
          ...(tokens.slice(many.start, many.end).some((token) => freshWord.test(token.text)) ? { fresh: true } : {}),
          ...(tokens.slice(many.start, many.end).some((token) => moreWord.test(token.text)) ? { more: true } : {}),
        });
  const two = both.at(tokens, index, end) ?? couple.at(tokens, index, end);
  return two === undefined ? undefined : at(two, 'count', { count: 2, ...kindIn(two) });
};

// "20 bouts wanted, made 12"
const countsNext = (tokens: readonly Token[], index: number, end: number): boolean =>
  counted.at(tokens, index, end) !== undefined ||
  (/^(made|did|done|finished|completed)$/.test(tokens[index]?.text ?? '') && counted.at(tokens, index + 1, end) !== undefined);

const toldAlone = toldForms.map(([, form]) => form);
// All that anything told begins with; a number may be a name's.
const opens = [
  ...noneForms,
  ...shareForms,
  ...toldAlone,
  target,
  ...wholeOpens,
  reaching,
  reachingIf,
  kindFirst,
  share,
  counted,
  both,
  couple,
  single,
  named,
  whole,
  joins,
];
/** What begins here, if anything is told. */
export const eventAt = (tokens: readonly Token[], index: number, end: number, kindsFirst: boolean): Event | 'unsure' | undefined => {
  const token = tokens[index];
  if (token?.number === undefined && !beginsAt(opens, tokens, index) && !wholeWord.has(token?.text ?? '')) return undefined;
  const none = firstAt(noneForms, tokens, index, end);
  if (none !== undefined) return at(none, 'none', kindIn(none));
  const part = shareSaid(tokens, index, end);
  if (part !== undefined) return at(part.match, 'share', { fraction: part.fraction, ...kindIn(part.match) });
  const aim = target.at(tokens, index, end);
  if (aim !== undefined && countsNext(tokens, aim.end, end)) return at(aim, 'target', { of: amount(aim.kept['m']), ...kindIn(aim) });
  const all = wholeAhead(tokens, index, end);
  if (all !== undefined) return at(all, 'target', { of: amount(all.kept['m']), ...kindIn(all) });
  const reach = reaching.at(tokens, index, end);
  if (reach !== undefined && counted.at(tokens, reach.end, end) !== undefined) return at(reach, 'reach');
  const reached = reachingIf.at(tokens, index, end);
  if (reached !== undefined && counted.at(tokens, reached.end, end) !== undefined) return at(reached, 'reach', { doubtful: true });
  const count = countAt(tokens, index, end, kindsFirst);
  if (count !== undefined) return count;
  for (const [told, form, behind] of beginsAt(toldAlone, tokens, index) ? toldForms : []) {
    const match = form.at(tokens, index, end);
    if (match === undefined || match.end === match.start) continue;
    // "12 off halos" are twelve of them; gone off they are or went.
    if (told === 'lost' && match.end === match.start + 1 && tokens[match.start]?.text === 'off') continue;
    if (told === 'toMake' && counted.at(tokens, match.end, end) === undefined) continue;
    // "cut 5 bouts" may take them off the order.
    if (told === 'stage' && tokens[match.start]?.text === 'cut' && counted.at(tokens, match.end, end)?.kept['p'] !== undefined)
      return 'unsure';
    const ofAllThese = told === 'done' && tokens.slice(match.start, match.end).some((token) => /^(all|both|everything)$/.test(token.text));
    return at(match, told, { ...(behind === true ? { behind } : {}), ...(ofAllThese ? { all: true } : {}) });
  }
  const one = single.at(tokens, index, end);
  if (one !== undefined) return at(one, 'count', { count: 1, ...kindIn(one) });
  const kind = named.at(tokens, index, end);
  if (kind !== undefined)
    return at(kind, 'kind', { ...kindIn(kind), ...(ofAll.test(tokens[kind.start]?.text ?? '') ? { all: true } : {}) });
  const everything = whole.at(tokens, index, end);
  if (everything !== undefined) return at(everything, 'whole');
  if (wholeWord.has(token?.text ?? '')) return { told: 'whole', start: index, end: index + 1 };
  const join = joins.at(tokens, index, end);
  return join === undefined ? undefined : at(join, 'join', tokens[index]?.text === ',' ? { comma: true } : {});
};
