// Whether the price has tax in it or takes it on top: "inc GST", "+ VAT", "plus 18% GST", "before tax".

import type { FactOf } from '../fact.ts';
import { besidePrice, bothTaxes, noneOnTop, ofUnread, unsure, withoutSecond } from '../order/tax-doubts.ts';
import { beginsAt, type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import type { Token } from '../text/token.ts';

type Basis = NonNullable<FactOf<'tax'>['basis']>;

const rate = '(@|at|of)? (<rate:percent>)?';
const rateBehind = '(@|at|of|-|\\(|is){0,2} <rate:percent> (\\))?';
const forms: readonly [Basis, ReturnType<typeof pattern>][] = (
  [
    [
      'on top',
      `(no|without) (the)? ${rate} <tax:tax> (on|in|included|added|put|charged)? (it|that|this|there|them)? (on|in)? (yet|as yet|so far|at the moment)`,
    ],
    ['on top', `(no|nil) <tax:tax> (in|included|inc) (it|that|there|this|the price)?`],
    [
      'on top',
      `(hasn't|hasnt|haven't|havent|hadn't|doesn't|doesnt|does not|don't|dont|not|isn't|isnt) (got|have|having|with|carry|cover|covering) (the|any)? ${rate} <tax:tax> (in|on)? (it|there|them|that|the price)?`,
    ],
    ['included', `<tax:tax> (is|are|'s|was)? (already on|on) (it|there|them|that|the price) already`],
    ['included', `<tax:tax> (is|are|'s)? already on (it|there|them|that)?`],
    [
      'included',
      `<tax:tax> ${rate} (is|are|'s|all|already|been){0,2} (covered|taken care of|factored in|rolled in|baked in|worked in|allowed for|accounted for|absorbed|counted|bundled|bundled in|all in|thrown in|sorted)`,
    ],
    ['included', `(counting|factoring in|allowing for|covers|covering) (the)? ${rate} <tax:tax>`],
    [
      'on top',
      `<tax:tax> ${rate} (is|are|gets|comes|being|billed|charged|invoiced|payable|paid|will be|to be){0,2} (added|on top|<onTop>|separately|over and above|at checkout|outside|at the till|on the invoice|afterwards)`,
    ],
    [
      'on top',
      `(w|with) (/)? (the)? ${rate} <tax:tax> (on top|on the top|<onTop>|extra|additional|separate|added|to add|to go on|to come) (on)?`,
    ],
    ['none', `(no|zero|nil|without any) <tax:tax> (on this|on it|charged|applies|to pay)?`],
    ['none', `<tax:tax> (-)? (free|exempt)`],
    ['none', `(not|arent|aren't) <tax:tax> registered`],
    [
      'on top',
      `(not|isn't|isnt|without|doesn't|doesnt|does not|never) (<included>|include|counting|allowing for|adding) (the|any)? ${rate} <tax:tax>`,
    ],
    [
      'on top',
      `<tax:tax> (is|are|isn't|isnt)? (not)? (excluded|extra|on top|additional|separate|separately|exclusive|excl|added|to be added|to add|on top of that|to go on|goes on top|as applicable|applicable|not <included>|isn't <included>|excluding)`,
    ],
    [
      'on top',
      `<tax:tax> ${rate} (is|has|needs|will|should|still|yet){0,2} (to)? (be|go|come|going|getting|get)? (on|added|add|adding|come|applied) (on|to)? (top|that|it|this|them)?`,
    ],
    ['on top', `<tax:tax> (not|isn't|isnt|hasn't been|hasnt been|not been) (on|in|added|put on) (it|that|there|them)? (yet)?`],
    ['on top', `<tax:tax> (:|=|-) (<onTop>|extra|on top|added|not <included>|excluded)`],
    ['included', `<tax:tax> (:|=|-) (<included>|in|yes)`],
    ['included', `(got|has|with|have) (the)? <tax:tax> (in|on) (it|there|them|already)`],
    ['included', `(w|with) (/)? (the)? ${rate} <tax:tax>`],
    ['on top', `<tax:tax> ${rate} (is|are)? (not <included>|to be added|on top|extra|additional|to go on|to add|added on|on it)`],
    ['on top', `(plus|+|and|&|add|then|w|with) (the|a)? <rate:percent> <tax:tax> (on top|extra)?`],
    // "ex VAT at 13.5%", "+ vat (23%)"
    [
      'on top',
      `(before|without|net of|pre|<onTop>|plus|+|add|and|then) (.)? (the|applicable|any)? <tax:tax> ${rateBehind} (on top|extra)?`,
    ],
    ['on top', `(plus|+|add) (the|applicable|any)? <tax:tax> ${rate} (on top|extra)?`],
    [
      'on top',
      `(before|excluding|exclusive of|exclusive|excludes|excl|excl.|exc|ex|exl|exlc|less|without|w/o|net of|minus|pre|ex.) (.|-|the|all)? (the)? ${rate} <tax:tax>`,
    ],
    ['on top', `<onTop> (.)? (of)? (the)? ${rate} <tax:tax>`],
    ['on top', `(add|and) <tax:tax> (on top|to that|to it|after)`],
    ['on top', `<rate:percent> <tax:tax> (on top|extra|additional|to add|to be added|is extra)`],
    ['on top', `<tax:tax> (is|at|@|of|:)? <rate:percent> (on top|extra|additional|to add|to be added)`],
    ['included', `(<included>|with|w) (.)? (of|the)? <tax:tax> ${rateBehind}`],
    ['included', `(<included>|with|after) (.)? (of|the|all)? (the)? ${rate} <tax:tax>`],
    [
      'included',
      `<tax:tax> ${rate} (is|are|all|was|already)? (already|all)? (<included>|in there|in it|inside|in that|paid|in the price|built in|in)`,
    ],
    ['included', `<rate:percent> <tax:tax> <included>`],
    ['included', `all taxes (in|<included>)`],
    ['on top', `(pre|pre-|before) (-)? tax`],
    ['on top', 'pretax'],
    ['on top', 'untaxed'],
  ] as const
).map(([basis, source]) => [basis, pattern(source.replaceAll('<tax:tax>', bothTaxes))]);

const formsAlone = forms.map(([, form]) => form);

// "38 each inc": the word alone speaks of tax when nothing else follows that could be what is included.
const aloneIncluded = pattern('<word:included>');
const aloneOnTop = pattern('<word:onTop>');
const mayStandAlone = /^(inc|incl|inclusive|inlc|included|icl|inkl|gross|ex|excl|exclusive|exc|net|exl|exlc|includ|inclu)$/;

const endsThere = (reader: Reader, index: number): boolean => {
  const next = reader.tokens[index];
  if (next === undefined || next.kind === 'line' || next.kind === 'sign' || !reader.free(index)) return true;
  return (
    next.means['material'] !== undefined ||
    /^(and|pls|please|plse|thanks|ta|cheers|for|dried|all|x|now|sorry|then|ok|thx|not|each|ea|event|wedding|party|gala|date)$/.test(
      next.text,
    ) ||
    next.means['all'] !== undefined
  );
};

const alone = (reader: Reader, index: number): Basis | undefined => {
  const token = reader.tokens[index];
  if (token === undefined || !mayStandAlone.test((token.guessed ?? token.text).replace(/ \.$/, ''))) return undefined;
  const dot = reader.tokens[index + 1]?.text === '.' ? 1 : 0;
  if (!endsThere(reader, index + 1 + dot)) return undefined;
  const before = reader.tokens[index - 1];
  const afterPrice =
    before !== undefined &&
    (before.number?.form === 'money' ||
      before.number?.form === 'slashed' ||
      before.number?.form === 'plain' ||
      before.means['each'] !== undefined ||
      before.means['all'] !== undefined ||
      before.means['piece'] !== undefined ||
      before.means['pack'] !== undefined ||
      before.means['ingredient'] !== undefined ||
      before.text === ')' ||
      before.means['budget'] !== undefined ||
      before.kind === 'line' ||
      /^(,|\.|\(|-|no|now|is|are|was|all|both|n|and|&|not|actually|meant|mean|its|it's|thats|that's|those|they're|theyre|these|this|all|be|it|that|board|pair|set|lot|sorry|price|prices|\/|;)$/.test(
        before.text,
      ));
  if (!afterPrice) return undefined;
  if (before.text === 'not') return undefined;
  if (aloneIncluded.at(reader.tokens, index, index + 1) !== undefined) return 'included';
  return aloneOnTop.at(reader.tokens, index, index + 1) !== undefined ? 'on top' : undefined;
};

const taxFact = (basis: Basis, match: Match): { fact: 'tax'; basis: Basis; name?: string; rate?: string } => {
  const tax = match.kept['tax'];
  const name = tax?.text === 'btw' ? undefined : tax?.means['taxName']; // "that's ex btw": by the way
  const said = match.kept['rate']?.number?.amount;
  return { fact: 'tax', basis, ...(name === undefined ? {} : { name }), ...(said === undefined ? {} : { rate: said }) };
};

const andTax = pattern('(and|&|n) (the)? <tax:tax>');
const behindPrice = (token: Token | undefined): boolean =>
  token?.number?.form === 'money' ||
  token?.number?.form === 'plain' ||
  token?.means['each'] !== undefined ||
  token?.means['all'] !== undefined;

// "and vat all in", "and vat not on top" say something else.
const ends = (reader: Reader, index: number): boolean =>
  endsThere(reader, index) && reader.tokens[index]?.means['all'] === undefined && reader.tokens[index]?.text !== 'not';

/** The tax words at this place, if any: used by corrections too. */
export const taxAt = (reader: Reader, index: number): { match: Match; fact: ReturnType<typeof taxFact> } | undefined => {
  const places = beginsAt(formsAlone, reader.tokens, index) ? forms : [];
  for (const [basis, form] of places) {
    const match = form.at(reader.tokens, index, reader.tokens.length);
    if (match !== undefined && allFree(reader, match)) return { match, fact: taxFact(basis, match) };
  }
  // "15 each and vat"
  const further = andTax.at(reader.tokens, index, reader.tokens.length);
  if (further !== undefined && allFree(reader, further) && behindPrice(reader.tokens[index - 1]) && ends(reader, further.end))
    return { match: further, fact: taxFact('on top', further) };
  const basis = alone(reader, index);
  return basis === undefined || !reader.free(index)
    ? undefined
    : { match: { start: index, end: index + 1, kept: {} }, fact: { fact: 'tax', basis } };
};

const allFree = (reader: Reader, match: Match): boolean => {
  for (let index = match.start; index < match.end; index++) if (!reader.free(index)) return false;
  return true;
};

// "25 each inc, tax 8.25%": the rate stands apart from where it goes.
const rateAlone = pattern('<tax:tax> (rate)? (is|at|@|of|:|=)? <rate:percent>');

const find = (reader: Reader): Finding[] => {
  const findings: Finding[] = [];
  const open = unsure.in(reader.tokens, 0, reader.tokens.length);
  const name = open?.kept['tax']?.means['taxName'];
  if (open !== undefined && allFree(reader, open))
    return name === undefined ? [] : [found(reader, open.start, open.end, [{ fact: 'tax', name }])];
  let basis: string | undefined;
  let first: string | undefined;
  for (let index = 0; index < reader.tokens.length; index++) {
    // "no vat on top" may mean "no, vat on top": neither is read.
    const doubtful = noneOnTop.at(reader.tokens, index, reader.tokens.length);
    if (doubtful !== undefined) {
      index = doubtful.end - 1;
      continue;
    }
    const read = taxAt(reader, index);
    if (read === undefined) {
      const alone = rateAlone.at(reader.tokens, index, reader.tokens.length);
      if (alone === undefined || !allFree(reader, alone)) continue;
      const rate = alone.kept['rate']?.number?.amount;
      const own = alone.kept['tax']?.means['taxName'];
      if (rate !== undefined)
        findings.push(found(reader, index, alone.end, [{ fact: 'tax', rate, ...(own === undefined ? {} : { name: own }) }]));
      index = alone.end - 1;
      continue;
    }
    if (ofUnread(reader, index)) return [];
    // Said twice the same way is said once: "45ea inc & 18ea inc"; "5% GST and 7% PST" are two.
    const another = first !== undefined && read.fact.name !== undefined && read.fact.name !== first;
    if (basis === read.fact.basis) findings.push({ start: index, end: read.match.end, ...(another ? { held: true } : { facts: [] }) });
    else if (basis === undefined) findings.push(withoutSecond(reader, read.match, found(reader, index, read.match.end, [read.fact])));
    // "10 bouts 12 inc, 5 corsages 30 ex": no one basis holds for the order.
    else if (besidePrice(reader, index) && findings.every(({ start }) => besidePrice(reader, start))) return [];
    basis ??= read.fact.basis;
    first ??= read.fact.name;
    index = read.match.end - 1;
  }
  return findings;
};

export const taxBasis: Phrase = { name: 'tax basis', examples: ['inc GST', '+ VAT', 'plus 18% GST', 'before tax'], find };
