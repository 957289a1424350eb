// "swap the 2 wrist corsages for pin-ons": two changes of count. "scrap the crowns", "no corsages now": one, to none.

import type { PieceKind } from '../../handbook/pieces.ts';
import { currencyFields } from '../order/read-order.ts';
import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isSingle } from '../text/token.ts';
import { countedGone, insteadOf, kind, numberOf } from './instead-of.ts';
import { oneForSome } from './one-for-some.ts';
import { priceOfSwapped } from './price-of-added.ts';
import { wrongKind } from './wrong-kind.ts';

const forms = [
  '(swap|change|switch|replace|exchange|trade|swop|turn|make|convert|swapping|switching|swapped) (out)? (all|both|those|them)? (of)? (the|those|our|her|all the)? (<n:count>|both)? (<material>)? <a:piece> (for|to|with|into|in|over to|as) (the|a|some|all)? (<m:count>)? (<material>)? <b:piece>',
  '(the|all the|those|all)? (<n:count>|both)? <a:piece> (are|is|should be|to be|now|becoming|to become|become|will be|go|going) (now|to be|all)? (<m:count>)? <b:piece> (now|instead)?',
  // "make the 3 crowns combs instead"
  '(make|do) (all)? (of)? (the|those|these|our|her|all the|both) (<n:count>|both)? (<material>)? <a:piece> (all|as){0,2} <b:piece> (instead|rather|now)?',
  '<m:count> <b:piece> (instead of|not|rather than|in place of|replacing|and not) (the|any|a)? (<n:count>)? <a:piece>',
  "instead of (the|any|her|our)? (<n:count>)? <a:piece> (,|-)? (do|make|have|use|it's|its|we want|they want|she wants|can we do|let's do|lets do|go for|put)? (it|them|us)? <m:count> <b:piece>",
  '<b:piece> (instead of|not|rather than|in place of) (the)? (<n:count>)? <a:piece>',
  // "not 3 crowns, 3 combs"
  "not (the)? (<n:count>)? <a:piece> (,|but|-){1,2} (its|it's|they're|theyre|make it|make that|should be|actually)? (<m:count>)? <b:piece>",
].map((source) => pattern(source));
const gone = pattern(
  "(scrap|scratch|scrub|drop|cancel|lose|remove|ditch|no more|no|forget|forget about|ignore|disregard|never mind|nevermind|bin|skip|without|cut|take out|take off|delete|kill|leave out|not doing|don't need|dont need|doesn't want|doesnt want|doesn't need|doesnt need|no longer need|no longer wants|no longer want|no need for|pull|losing|dropping|cancelling|not having|they don't want|dont want|don't want|not doing the|canceling|nix|axe|scrapping|no to) (the|any|all|all the|her|those|our|out)? (of)? (the)? <p:piece> (now|please|pls|after all|any more|anymore|altogether|from the order|this time|off the order|then|sorry|thanks|at all|whatsoever|in the end){0,3}",
);
const goneAfter = pattern(
  '(the)? <p:piece> (are|is|have been|has been|got)? (cancelled|canceled|scrapped|off|out|gone|not needed|no longer needed|not happening|off the list|off the order|dropped|removed|not wanted) (now)?',
);

const counted = (reader: Reader, match: Match): number | undefined => {
  const said = numberOf(match.kept['n']) ?? numberOf(match.kept['m']);
  if (said !== undefined) return said;
  return reader.tokens.slice(match.start, match.end).some((token) => token.text === 'both') ? 2 : undefined;
};

// "change 4 of the bouts to pin corsages": so many of one kind become the other.
const someOf = pattern(
  '(swap|change|switch|replace|make|turn|convert) <n:count> (of|x) (the|those|our|her|my)? <a:piece> (to|for|into|with|over to)? (a|some)? <b:piece>',
);
const someSwapped = (reader: Reader, part: Part): Finding | undefined => {
  const match = someOf.in(reader.tokens, part.start, part.end);
  const [from, to] = [kind(match?.kept['a']), kind(match?.kept['b'])];
  const count = numberOf(match?.kept['n']);
  if (match === undefined || count === undefined || from === undefined || to === undefined) return undefined;
  if (from === to || from === 'unspecified' || to === 'unspecified') return undefined;
  return found(reader, match.start, match.end, soManyOver(count, from, to));
};
const soManyOver = (count: number, from: PieceKind, to: PieceKind): Unworded[] => [
  { fact: 'change', what: 'count', by: -count, piece: from },
  { fact: 'change', what: 'count', by: count, piece: to },
];

// "two of the lapels are corsages now, dad's allergic": how many the kind is said of; `open` where it is some or most of them.
const partOf = pattern('(<n:count>|half|some|most|a few|several|a couple|part) of (the|our|her|his|my|those|these)?');
const saidOf = ({ tokens }: Reader, from: number, start: number): { start: number; count: number | 'open' } | undefined => {
  for (let at = Math.max(from, start - 4); at < start; at++) {
    const match = partOf.at(tokens, at, start);
    if (match?.end === start) return { start: at, count: numberOf(match.kept['n']) ?? 'open' };
  }
  return undefined;
};

/** One kind for another, or one taken off; held where how many is a range or a choice. */
export const swapped = (reader: Reader, part: Part): Finding | undefined => {
  const swap = swapIn(reader, part);
  if (swap?.facts === undefined) return swap;
  const open = reader.tokens.slice(swap.start, swap.end).some(({ number }) => number?.form === 'plain' && !isSingle(number));
  return open ? { start: swap.start, end: swap.end, held: true } : swap;
};

const isMore = (fact: Unworded): boolean => fact.fact === 'change' && Number(fact.by ?? 0) > 0;

const swapIn = (reader: Reader, part: Part): Finding | undefined => {
  const some = wrongKind(reader, part) ?? oneForSome(reader, part) ?? someSwapped(reader, part);
  if (some !== undefined) return some;
  for (const form of forms) {
    const match = form.in(reader.tokens, part.start, part.end);
    if (match === undefined) continue;
    const [from, to] = [kind(match.kept['a']), kind(match.kept['b'])];
    if (from === to || from === 'unspecified' || to === 'unspecified') continue;
    // "did 8 bouts instead of corsages" tells of the work.
    if (/^(did|made|done|finished|completed|boxed)$/.test(reader.tokens[match.start - 1]?.text ?? '')) return undefined;
    // "bouts are 15 corsages 35": their prices, or how many of each.
    const are = reader.tokens.slice(match.start, match.end).some(({ text }) => /^(are|is)$/.test(text));
    if (are && match.kept['m'] !== undefined && reader.tokens[match.end]?.number !== undefined)
      return { start: match.start, end: match.end + 1, held: true };
    const some = match.kept['n'] === undefined && match.kept['m'] === undefined ? saidOf(reader, part.start, match.start) : undefined;
    if (some?.count === 'open') return { start: some.start, end: match.end, held: true };
    if (some !== undefined && from !== undefined && to !== undefined)
      return found(reader, some.start, match.end, soManyOver(some.count, from, to));
    const count = counted(reader, match);
    const given = numberOf(match.kept['m']) ?? count;
    const old = numberOf(match.kept['n']);
    // "swap 1 of 3" leaves the rest: with a number the difference would need the thread, so the whole kind is meant only as said.
    // "swap 3 bouts for corsages" without "the" takes three of them; "swap the 2 …" takes them all.
    const whole =
      /^(the|both|all|those|our|her)$/.test(reader.tokens[match.start + 1]?.text ?? '') ||
      !/^(swap|change|switch|replace|exchange|trade|swop|turn|convert)$/.test(reader.tokens[match.start]?.text ?? '');
    const facts: Unworded[] =
      given !== undefined && old !== undefined && !whole
        ? [
            { fact: 'change', what: 'count', by: -old, piece: from },
            { fact: 'change', what: 'count', by: given, piece: to },
          ]
        : given === undefined
          ? [{ fact: 'change', what: 'piece', from, to, piece: from }]
          : [
              { fact: 'change', what: 'count', to: given, piece: to },
              { fact: 'change', what: 'count', to: 0, ...(old === undefined ? {} : { from: old }), piece: from },
            ];
    // "combs instead of crowns, still 4"
    const many = given === undefined ? asMany.at(reader.tokens, match.end, part.end) : undefined;
    if (many?.end === part.end) return found(reader, match.start, many.end, [...facts, ...soMany(many, to)]);
    // Of a whole kind that becomes another the price is left unread: nothing of that kind is ordered yet.
    const price = to === undefined || !facts.some(isMore) ? undefined : priceOfSwapped(reader, match.end, part.end, to);
    return found(reader, match.start, price?.end ?? match.end, [...facts, ...(price?.facts ?? [])]);
  }
  const many = countedGone(reader, part);
  if (many !== undefined) return many;
  const none = gone.at(reader.tokens, part.start, part.end) ?? lateStart(reader, part) ?? goneAfter.at(reader.tokens, part.start, part.end);
  if (none === undefined || kind(none.kept['p']) === 'unspecified') return undefined;
  // "no bout for the ring bearer" takes nobody else's away.
  if (/^(for|on|to|with)$/.test(reader.tokens[none.end]?.text ?? '')) return undefined;
  const first = reader.tokens[none.start]?.text ?? '';
  // "no corsages at all yet", "no crowns made today": of the work.
  if (/^(done|made|left|finished|yet|so|started|boxed|ready)$/.test(reader.tokens[none.end]?.text ?? '')) return undefined;
  const instead = insteadOf(reader, none.end, part.end, kind(none.kept['p']));
  const said = reader.tokens.slice(none.start, part.end).some((token) => /^(now|instead|rather|place)$/.test(token.text));
  // "no corsages, 12 bouts" may be said of a first order.
  if (instead !== undefined && (first !== 'no' || said)) {
    const [piece, price] = [kind(instead.kept['b']), instead.kept['c']?.number];
    return found(reader, none.start, instead.end, [
      { fact: 'change', what: 'count', to: 0, piece: kind(none.kept['p']) },
      { fact: 'change', what: 'count', to: numberOf(instead.kept['n']) ?? 1, piece },
      ...(price === undefined
        ? []
        : [{ fact: 'change', what: 'price', to: price.amount, per: 'each', ...currencyFields(price), piece } as const]),
    ]);
  }
  const other = first === 'no' && !said ? undefined : otherKind(reader, none, part.end);
  if (other !== undefined) return other;
  // "no crowns now, they want combs at 12": a price of the other kind alone.
  const rest = reader.tokens.slice(none.end, part.end);
  const ofOther = rest.some(({ means }) => means['piece'] !== undefined && means['piece'] !== 'unspecified');
  if (
    said &&
    ofOther &&
    rest.some(({ number }) => number?.form === 'money' || number?.form === 'plain') &&
    wanted.at(reader.tokens, none.end, part.end)
  )
    return { start: none.start, end: part.end, held: true };
  const stops = /^(,|-|;|but|and|because|cos|coz|as|since)$/.test(reader.tokens[none.end]?.text ?? '');
  // "she doesn't want the crowns too heavy", "ignore the crown emoji": how or of what, and not whether.
  const wished = reader.tokens
    .slice(none.start, none.end)
    .some(({ text }) => /^(want|wants|need|ignore|disregard|mind|nevermind)$/.test(text));
  if (wished && !stops && none.end < part.end) return undefined;
  if ((part.end - none.end > 6 && !stops) || reader.tokens.slice(none.end, part.end).some((token) => token.number !== undefined))
    return undefined;
  return found(reader, none.start, none.end, [{ fact: 'change', what: 'count', to: 0, piece: kind(none.kept['p']) }]);
};

// "no crowns now, they want combs, still 4": as many as there were, or so many, of the other kind.
const wanted = pattern(
  "(,|-|and|n|but|&){0,2} (they|she|he|we|bride|client|couple|they'd|she'd|just|now){0,2} (want|wants|wanted|do|make|have|go for|going for|gone for|going with|go with|gone with|prefer|prefers|like|rather|rather have|decided on){0,2} (the)? <b:piece> (now|instead|rather|please|pls){0,2}",
);
const asMany = pattern(
  '(,|-|and|but|n){0,2} (still|same|the same|also) (<n:count> (of (them|em|those))?|number|amount|count|qty|quantity|no|many|as many|number of them) (please|pls|of them)?',
);
const otherKind = (reader: Reader, none: Match, end: number): Finding | undefined => {
  const { tokens } = reader;
  const from = kind(none.kept['p']);
  const match = wanted.at(tokens, none.end, end);
  const to = kind(match?.kept['b']);
  if (match === undefined || to === from || to === 'unspecified') return undefined;
  const many = asMany.at(tokens, match.end, end);
  const instead = tokens.slice(match.start, match.end).some(({ text }) => /^(instead|rather|rather have)$/.test(text));
  // "no crowns now, they want combs": how many is not said.
  if ((many === undefined && !instead) || (many?.end ?? match.end) !== end) return undefined;
  return found(reader, none.start, end, [{ fact: 'change', what: 'piece', from, to, piece: from }, ...soMany(many, to)]);
};
const soMany = (many: Match | undefined, piece: PieceKind): Unworded[] => {
  const number = many?.kept['n']?.number;
  return number === undefined || number.max !== undefined ? [] : [{ fact: 'change', what: 'count', to: Number(number.amount), piece }];
};

// "she called back, no flower crown anymore": who says so.
const saidSo = pattern(
  "(she|he|they|bride|client|customer|planner|couple|mum|mom|her|the|his|their|mob|mog){1,2} (has|have|had|'s|just|also|then){0,2} (called|rang|phoned|emailed|texted|messaged|replied|been on|got back|gotten back|came back|come back|wrote|popped in|answered|confirmed|says|said|decided) (back|again|in|us|me|to us|to me|to say|today|this morning|just now|again today|saying|that|earlier|on the phone){0,3} (,|-|:|;|and|to say|so|that|saying){0,2}",
);
const lateStart = (reader: Reader, part: Part): Match | undefined => {
  const said = saidSo.at(reader.tokens, part.start, part.end);
  const none = said === undefined ? undefined : gone.at(reader.tokens, said.end, part.end);
  // "she says no lapel flowers wilt" takes none away.
  if (none !== undefined && (none.end === part.end || /^(,|-|;)$/.test(reader.tokens[none.end]?.text ?? ''))) return none;
  let index = part.start;
  while (
    index < part.end &&
    (index === part.start || gone.at(reader.tokens, index, part.end) === undefined) &&
    /^(sorry|soz|apologies|update|fyi|so|there's|theres|there|will|be|is|it's|its|actually|ok|oh|no|wait|,|can|you|we|please|pls|they|she|he|bride|client|has|have|decided|to|now|the|wants|want|wanted|just|lets|let's|are)$/.test(
      reader.tokens[index]?.text ?? '',
    )
  )
    index += 1;
  return index === part.start ? undefined : gone.at(reader.tokens, index, part.end);
};
