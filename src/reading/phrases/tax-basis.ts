// Whether the price has tax in it or takes it on top: "inc GST", "+ VAT", "plus 18% GST", "before tax".

import { besidePrice, noneOnTop, ofUnread, unsure, withoutSecond } from '../order/tax-doubts.ts';
import { type Basis, taxForms } from '../order/tax-forms.ts';
import { beginsAt, type Match, pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import type { Token } from '../text/token.ts';

const formsAlone = taxForms.map(([, form]) => form);

// "38 each inc": the word alone speaks of tax when nothing else follows that could be what is included.
const aloneIncluded = pattern('<word:included>');
const aloneOnTop = pattern('<word:onTop>');
const mayStandAlone =
  /^(inc|incl|inclusive|inlc|included|icl|inkl|gross|ex|excl|exclusive|exc|net|exl|exlc|includ|inclu|ttc|brutto|netto|hors taxes?)$/;

/** The whole message. */
const saidAlone =
  /^(yes |yep |ok |its |it's |all |sorry ){0,2}(inc|incl|inclusive|included|ex|excl|exc|exclusive)( please| pls| ta| thanks)?$/;

const endsThere = (reader: Reader, index: number): boolean => {
  const next = reader.tokens[index];
  if (next === undefined || next.kind === 'line' || next.kind === 'sign' || !reader.free(index)) return true;
  return (
    next.means['material'] !== undefined ||
    /^(and|pls|please|plse|thanks|ta|cheers|for|dried|all|x|now|sorry|then|ok|thx|not|each|ea|event|wedding|party|gala|date|covers|cover|gets|buys|pays)$/.test(
      next.text,
    ) ||
    next.means['all'] !== undefined
  );
};

/** An order, or pieces whose price was asked for. */
const isOfOrder = ({ context: { pieces, open } }: Reader): boolean =>
  pieces.length > 0 || (open?.kind === 'missing' && open.count !== undefined);

const alone = (reader: Reader, index: number): Basis | undefined => {
  const token = reader.tokens[index];
  if (token?.means['included'] === undefined && token?.means['onTop'] === undefined) return undefined;
  if (!mayStandAlone.test((token.guessed ?? token.text).replace(/ \.$/, ''))) return undefined;
  const dot = reader.tokens[index + 1]?.text === '.' ? 1 : 0;
  if (!endsThere(reader, index + 1 + dot)) return undefined;
  // "inc" and nothing else, of an order there is: an answer to what was assumed.
  if (saidAlone.test(reader.tokens.map(({ text }) => text).join(' ')) && isOfOrder(reader))
    return aloneIncluded.at(reader.tokens, index, index + 1) === undefined ? 'on top' : 'included';
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
      before.means['upTo'] !== undefined ||
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

// All that tax words begin with.
const opens = [...formsAlone, andTax, aloneIncluded, aloneOnTop];
/** The tax words at this place, if any: used by corrections too. */
export const taxAt = (reader: Reader, index: number): { match: Match; fact: ReturnType<typeof taxFact> } | undefined => {
  if (!beginsAt(opens, reader.tokens, index)) return undefined;
  const places = beginsAt(formsAlone, reader.tokens, index) ? taxForms : [];
  for (const [basis, form] of places) {
    const match = form.at(reader.tokens, index, reader.tokens.length);
    if (match !== undefined && allFree(reader, match.start, match.end)) return { match, fact: taxFact(basis, match) };
  }
  // "15 each and vat"
  const further = andTax.at(reader.tokens, index, reader.tokens.length);
  if (
    further !== undefined &&
    allFree(reader, further.start, further.end) &&
    behindPrice(reader.tokens[index - 1]) &&
    ends(reader, further.end)
  )
    return { match: further, fact: taxFact('on top', further) };
  const basis = alone(reader, index);
  return basis === undefined || !reader.free(index)
    ? undefined
    : { match: { start: index, end: index + 1, kept: {} }, fact: { fact: 'tax', basis } };
};

// "25 each inc, tax 8.25%": the rate stands apart from where it goes.
const rateAlone = pattern('<tax:tax> (rate)? (is|at|@|of|:|=)? <rate:percent>');
const said = [...opens, noneOnTop, rateAlone];

const find = (reader: Reader): Finding[] => {
  const findings: Finding[] = [];
  const open = unsure.in(reader.tokens, 0, reader.tokens.length);
  const name = open?.kept['tax']?.means['taxName'];
  if (open !== undefined && allFree(reader, open.start, open.end))
    return name === undefined ? [] : [found(reader, open.start, open.end, [{ fact: 'tax', name }])];
  let basis: string | undefined;
  let first: string | undefined;
  for (let index = 0; index < reader.tokens.length; index++) {
    if (!beginsAt(said, reader.tokens, index)) continue;
    // "no vat on top" may mean "no, vat on top": neither is read.
    const doubtful = noneOnTop.at(reader.tokens, index, reader.tokens.length);
    const read = taxAt(reader, index); // "no gst to add, it's in there"
    if (doubtful !== undefined && !(read?.fact.basis === 'included' && read.match.end > doubtful.end)) {
      index = doubtful.end - 1;
      continue;
    }
    if (read === undefined) {
      const alone = rateAlone.at(reader.tokens, index, reader.tokens.length);
      if (alone === undefined || !allFree(reader, alone.start, alone.end)) continue;
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
