// "corsages should be wrist not pin, all 3", "… wrist not pin, at 45": what they are to be, and what they are not. The thread knows under
// which name it holds them. A number alone behind it is their number or their price, and is asked about.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Fact } from '../fact.ts';
import { currencyFields } from '../order/read-order.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Choice } from '../reading.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice, isSingle, type NumberRead, type Token } from '../text/token.ts';

const lead = "(sorry|soz|ok|actually|oh|so|and|no|update|,|please|pls|they|she|bride|client|we|want|wants|just|can|you|lets|let's){0,4}";
const not =
  '(,|-)? (not|instead of|rather than|and not|no longer|never) (the|a|on)? (<c:piece>|pin|pins|pinned|wrists) (ones|type|style|sort)?';
const many = '(,|-|for)? (all|both|all of|the)? (<n:count>|of them|all)? (of them|please|pls|now|instead|thanks|ta)?';
const becomes = `${lead} (make|have|do|change|switch|swap)? (<o:word>)? (<m:count>)? (of)? (the|those)? <a:piece> (are|is|should be|should all be|should have been|need to be|needs to be|have to be|has to be|must be|to be|to|be|all|now|meant to be|supposed to be|in|as|into){0,3} (a|the|on)? (<b:piece>|<w:word>) (ones|one|type|style|sort|corsages)? ${not}`;
const form = pattern(`${becomes} ${many}`);
const atPrice = pattern(
  `${becomes} (,|-|and|so|now){0,2} (they're|theyre|it's|its)? (at|@|for)? <q:amount> (<each>)? (now|please|pls|instead)?`,
);
// "make the 3 pin corsages wrist ones"
const made = pattern(
  `${lead} (make|have|do|want|switch|change) (<o:word>)? (<m:count>)? (of)? (the|those)? <a:piece> (all|as|into)? (a)? <b:piece> (ones|one|type|style|instead)? (please|pls|now|thanks|ta)?`,
);
// "2 of the 6 corsages are pin on"
const someOf = pattern(
  `${lead} <m:count> of (the|those|our|these) (<count>)? <a:piece> (are|is|should be|to be|need to be|needs to be|being|as|will be|now|want to be){1,2} (a|the|on)? <b:piece> (ones|one|instead|please|pls|now|not){0,2} (<c:piece>)?`,
);
const whole = /^(all|the|both|those|our|her|all the|their|my)$/;
const kindOf = (token: Token | undefined): PieceKind | undefined => token?.means['piece'] as PieceKind | undefined;
const amount = (token: Token | undefined): number | undefined => (token?.number === undefined ? undefined : Number(token.number.amount));

// "all 3", "3 of them"
const saysCount = ({ tokens }: Reader, number: Token): boolean => {
  const at = tokens.indexOf(number);
  return /^(all|both|the|all of)$/.test(tokens[at - 1]?.text ?? '') || /^of( them)?$/.test(tokens[at + 1]?.text ?? '');
};

const someAnother = (reader: Reader, part: Part): Finding | undefined => {
  const match = someOf.at(reader.tokens, part.start, part.end);
  const { a, b, m } = match?.kept ?? {};
  const [from, to, some] = [kindOf(a), kindOf(b), amount(m)];
  if (match?.end !== part.end || from === undefined || to === undefined || from === to || some === undefined) return undefined;
  if (m?.number?.max !== undefined || [from, to].includes('unspecified')) return undefined;
  return found(reader, part.start, part.end, [
    { fact: 'change', what: 'count', by: -some, piece: from },
    { fact: 'change', what: 'count', by: some, piece: to },
  ]);
};

export const kindNotKind = (reader: Reader, part: Part): Finding | undefined => {
  const other = someAnother(reader, part);
  if (other !== undefined) return other;
  const counted = form.at(reader.tokens, part.start, part.end);
  const priced = counted?.end === part.end ? undefined : atPrice.at(reader.tokens, part.start, part.end);
  const fully = priced?.end === part.end ? priced : counted;
  const match = fully ?? made.at(reader.tokens, part.start, part.end);
  const { a, b, c, o, m, n, q: cost } = match?.kept ?? {};
  const said = match?.kept['w']?.text ?? '';
  const [from, to] = [kindOf(a), kindOf(b) ?? (/^(pins?|pinned)$/.test(said) ? 'pin corsage' : undefined)];
  const taken = kindOf(c) ?? (to === 'wrist corsage' ? 'pin corsage' : 'wrist corsage');
  if (
    match === undefined ||
    from === undefined ||
    from === to ||
    match.end !== part.end ||
    !/corsage/.test(from ?? '') ||
    (to !== 'wrist corsage' && to !== 'pin corsage')
  )
    return undefined;
  if (taken === to || (taken !== 'wrist corsage' && taken !== 'pin corsage')) return undefined;
  if ([m, n].some((token) => isRangeOrChoice(token?.number))) return undefined;
  if (o !== undefined && !whole.test(o.text)) return undefined;
  if (from !== 'corsage' && from !== taken) return undefined;
  const some = amount(m);
  // "do 3 corsages wrist" may order them.
  if (
    fully === undefined &&
    some !== undefined &&
    o === undefined &&
    !/^(make|change|switch)$/.test(reader.tokens[match.start]?.text ?? '')
  )
    return undefined;
  // "3 corsages should be wrist not pin": three of them, however many there are.
  const facts: Unworded[] =
    some !== undefined && o === undefined
      ? [
          { fact: 'change', what: 'count', by: -some, piece: fully === undefined ? from : taken },
          { fact: 'change', what: 'count', by: some, piece: to },
        ]
      : [{ fact: 'change', what: 'piece', from, to, piece: from }];
  const all = amount(n) ?? (o === undefined ? undefined : some);
  const count: Unworded[] = all === undefined ? [] : [{ fact: 'change', what: 'count', to: all, piece: to }];
  const price = (number: NumberRead): Unworded[] => [
    { fact: 'change', what: 'price', to: number.amount, per: 'each', ...currencyFields(number), piece: to },
  ];
  if (cost !== undefined) {
    if (!isSingle(cost.number)) return { start: part.start, end: part.end, held: true };
    return found(reader, part.start, part.end, [...facts, ...count, ...price(cost.number)]);
  }
  if (n?.number === undefined || saysCount(reader, n)) return found(reader, part.start, part.end, [...facts, ...count]);
  const words = reader.words(part.start, part.end);
  const choice = (say: string, own: readonly Unworded[]): Choice => ({
    words: `${n.number?.amount} ${say}`,
    facts: [...facts, ...own].map((fact) => ({ ...fact, words }) as Fact),
  });
  const choices = [choice('pieces', count), choice('each', price(n.number))];
  return { start: part.start, end: part.end, asks: [{ about: 'count', why: 'which number', words, choices }] };
};
