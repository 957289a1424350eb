// Clauses that change a count or tell of a loss and say nothing else: read first, because every word of them is understood and no other number stands beside them.

import type { PieceKind } from '../../handbook/pieces.ts';
import { countOrPrice, isRare } from '../changes/now-count-or-price.ts';
import { oneToo } from '../changes/one-too.ts';
import { type ToldAs, toldForms } from '../changes/told-forms.ts';
import type { Fact } from '../fact.ts';
import { clausesOf } from '../held/clauses.ts';
import { isSpare } from '../order/spare-pieces.ts';
import { beginsAt, type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice, isSingle } from '../text/token.ts';
import { soMany } from '../words/kind-words.ts';

const opening =
  /^(,|-|ok|okay|oh|and|so|but|sorry|actually|no|nope|hey|hi|now|well|please|pls|plz|just|we|i|they|she|he|you|you'll|can|could|lets|let's|then|right|also|we've|weve|i've|ive|they've|theyve|she's|he's|that|that's|update|correction|apparently|argh|ugh|bugger|damn|oops|whoops|fyi|client|bride|the|hiya|morning|turns|out)$/;
const closing =
  /^(please|pls|plz|thanks|thank|you|ta|cheers|now|sorry|ok|okay|lol|then|mate|instead|today|overnight|tho|,|-|\.|…|!|argh|ugh|though|tho|in|total)$/;
// Behind the clause with no mark between: who says so, or why.
const remark =
  /^(my|our|her|his|their|grandma|grandma's|gran|nan|nana|uncle|auntie|aunt|mum|mom|mam|dad|bride|groom|groom's|bride's|client|couple|planner|mob|per|as|because|cos|coz|cause|since|after|lol|sorry|she|he|they|they've|i|we|quick|fyi|hi|morning|same|heads|best|cousin|someone|somebody|budget|budget's|just|glue|if|oops|per)$/;
const politely = pattern("if (that's|thats|that is|it's|its|you|u|poss|possible|ok)");
const quickOne = pattern('(quick|last|plus|another|little|small|final) one');
const people = pattern(
  '<count> (<word>)? (<role>|cousins|cousin|kids|guests|uncles|aunts|aunties|nieces|nephews|brothers|sisters|mates|friends|people|family)',
);
// "we're at 5 corsages now" tells of the work, unless people are the reason.
const saidWhy = pattern(
  "(coming|invited|joining|rsvp'd|rsvped|rsvp|flying in|can't make it|cant make it|cannot make it|can't come|cant come|not coming|dropped out|pulled out|is in|are in|plus one|changed (her|his|their) mind|forgot (her|his|their|about) <role>|(bride|client|planner|mob|couple|mum|mom) (has|have|just|has just)? (rang|called|emailed|texted|messaged|confirmed|added|changed|wants|says|said|asked))",
);
const doubtful = /^(if|unless|whether|might|maybe|may|perhaps|would|not|never|probably|possibly|hope|hopefully)$/;

const forms = toldForms.map(([, form]) => form);

const factFor = (as: ToldAs, count: number, piece: PieceKind | undefined, from: number | undefined): Unworded => {
  const kind = ofKind(piece);
  if (as === 'more' || as === 'fewer') return { fact: 'change', what: 'count', by: as === 'more' ? count : -count, ...kind };
  if (as === 'broke') return { fact: 'broke', count, ...kind };
  if (as === 'remade') return { fact: 'made', count, remade: true, ...kind };
  if (as === 'made') return { fact: 'made', count, ...kind };
  return { fact: 'change', what: 'count', to: count, ...(from === undefined ? {} : { from }), ...kind };
};

// "its - 2 bouts": a dash that stands apart takes nothing off.
const spaced = ({ tokens }: Reader, { start, end, kept }: Match): boolean => {
  const at = kept['n'] === undefined ? -1 : tokens.indexOf(kept['n'], start);
  return at > start && at < end && tokens[at - 1]?.text === '-' && (tokens[at]?.glued !== true || tokens[at - 1]?.glued === true);
};

// "its - 2 bouts now": two of them, or two fewer? It is asked.
const asked = (reader: Reader, { start, end, kept }: Match): Finding | undefined => {
  const [piece, number] = [kept['p']?.means['piece'] as PieceKind | undefined, kept['n']?.number];
  const again = reader.tokens.slice(start, end + 1).some(({ text }) => text === 'now');
  if (!again || piece === undefined || !isSingle(number)) return undefined;
  const words = reader.words(start, end);
  const choices = [
    { words: soMany(number.amount), facts: [{ ...factFor('now', Number(number.amount), piece, undefined), words } as Fact] },
    { words: `${number.amount} fewer`, facts: [{ ...factFor('fewer', Number(number.amount), piece, undefined), words } as Fact] },
  ];
  return { start, end, asks: [{ about: 'count', why: 'which number', words, choices }] };
};

const beyond = ({ tokens }: Reader, index: number): boolean =>
  quickOne.at(tokens, index, tokens.length) !== undefined || people.at(tokens, index, tokens.length) !== undefined;

const readClause = (reader: Reader, start: number, end: number, grown: boolean): Finding | undefined => {
  const { tokens } = reader;
  let dashed: Match | undefined;
  const matchAt = (from: number): readonly [ToldAs, Match] | undefined => {
    if (!beginsAt(forms, tokens, from)) return undefined;
    for (const [as, form] of toldForms) {
      const match = form.at(tokens, from, end);
      if (match === undefined || (as === 'now if why' && !grown)) continue;
      if (tokens[from]?.text === '-' && ((from > 0 && tokens[from - 1]?.kind !== 'line') || tokens[from + 1]?.glued !== true)) continue;
      if (spaced(reader, match)) {
        if (as === 'fewer') dashed ??= match;
        continue;
      }
      let last = match.end;
      while (last < end && closing.test(tokens[last]?.text ?? '')) last += 1;
      if (last === end || remark.test(tokens[last]?.text ?? '') || beyond(reader, last)) return [as, match];
    }
    return undefined;
  };
  for (let from = start; from < end; from++) {
    const told = matchAt(from);
    if (told !== undefined) return findingOf(reader, told, start, end);
    const either = dashed === undefined ? undefined : asked(reader, dashed);
    if (either !== undefined) return either;
    if (!opening.test(tokens[from]?.text ?? '')) return undefined;
  }
  return undefined;
};

const tallied = ({ tokens }: Reader, { start, end }: Match): boolean =>
  tokens.slice(start, end).some(({ text }) => /^(count|number|numbers|qty|quantity|tally|total|order)$/.test(text));

const findingOf = (reader: Reader, [as, match]: readonly [ToldAs, Match], start: number, end: number): Finding | undefined => {
  const number = match.kept['n']?.number;
  const was = match.kept['a']?.number;
  // "a pin came off 2 or 3 bouts": how many is not said, and nobody orders them. What they are to be now is asked elsewhere.
  if (isRangeOrChoice(number)) return as.startsWith('now') ? undefined : { start, end, held: true };
  // "bouts was 10-12, its 11 now": what they were is left out, and what they are is said.
  const before = isSingle(was) ? was : undefined;
  const piece = match.kept['p']?.means['piece'] as PieceKind | undefined;
  if (as === 'more' && match.kept['p'] !== undefined && isSpare(reader.tokens, reader.tokens.indexOf(match.kept['p'], match.start)))
    return undefined;
  const both = reader.tokens.slice(match.start, match.end).some(({ text }) => text === 'both');
  const several = /[^s]s$/.test(match.kept['p']?.text ?? '');
  // "the broken crowns are redone": how many is not said.
  if (as === 'remade' && number === undefined && several && !both) return undefined;
  // "corsages for the mums are off": nor here.
  const one = reader.tokens.slice(match.start, match.end).some(({ text }) => text === 'one');
  if (as === 'fewer' && number === undefined && several && !both && !one) return undefined;
  const count = number === undefined ? (as === 'remade' && both ? 2 : 1) : Number(number.amount);
  // "put the crowns up to 65" may be what one costs; "crown count 65" is not.
  const behind =
    match.kept['p'] !== undefined && match.kept['n'] === reader.tokens[match.end - 1] && before === undefined && !tallied(reader, match);
  if (piece !== undefined && (as === 'now or price' || (as === 'now' && behind && isRare(piece, count)))) {
    const ask = countOrPrice(reader, match, piece, number?.amount ?? '1');
    if (ask !== undefined) return { start, end, asks: [ask] };
  }
  // "all 24 lapels done and dusted"
  const all = as === 'made' && number !== undefined && reader.tokens[match.start]?.text === 'all' ? { all: true as const } : {};
  const fact = factFor(as, count, piece, before === undefined ? undefined : Number(before.amount));
  return found(reader, start, end, [{ ...fact, ...all } as Unworded]);
};

// "scratch the 4 crowns, they want 4 combs instead": one kind for another, which is read as a whole.
const forAnother = ({ tokens }: Reader, { start, end }: Part): boolean => {
  const words = tokens.slice(start, end);
  return words.some(({ text }) => /^(instead|rather)$/.test(text)) && new Set(words.flatMap(({ means }) => means['piece'] ?? [])).size > 1;
};

const find = (reader: Reader): Finding[] => {
  const findings: Finding[] = [];
  const grown = saidWhy.might(reader.tokens) && saidWhy.in(reader.tokens, 0, reader.tokens.length) !== undefined;
  for (const part of reader.untouched().slice(0, 12)) {
    if (part.asked || part.end - part.start > 40) continue;
    const too = oneToo(reader, part);
    if (too !== undefined) return [too];
    if (forAnother(reader, part)) continue;
    const whole = readClause(reader, part.start, part.end, grown);
    if (whole !== undefined) {
      findings.push(whole);
      continue;
    }
    for (const { start, end } of clausesOf(reader, part)) {
      const finding = readClause(reader, start, end, grown);
      if (finding !== undefined) findings.push(finding);
    }
  }
  const within = (index: number): boolean => findings.some(({ start, end }) => index >= start && index < end);
  // Another number or piece beside them makes it a list, an order or a tally, which are read as a whole; a word of doubt changes nothing yet.
  const { tokens } = reader;
  const polite = (index: number): boolean => politely.at(tokens, index, tokens.length) !== undefined;
  const harmless = (index: number): boolean => beyond(reader, index) || quickOne.at(tokens, index - 1, tokens.length) !== undefined;
  const numbered = (start: number, end: number): number =>
    tokens.slice(start, end).filter((token, at) => token.number !== undefined && !harmless(start + at)).length;
  const alone = tokens.every((token, index) => {
    if (within(index)) return true;
    if (doubtful.test(token.text)) return polite(index);
    return (token.number === undefined || harmless(index)) && token.means['piece'] === undefined;
  });
  // "12 done, the heat got to 4 of the corsages": a loss stands beside other work.
  const lost = findings.filter(({ facts, held }) => held || facts?.every((fact) => fact.fact === 'broke') === true);
  const unsure = tokens.some((token) => doubtful.test(token.text));
  return alone && findings.every(({ start, end }) => numbered(start, end) <= 2) ? findings : unsure ? [] : lost;
};

export const changeTold: Phrase = {
  name: 'more or fewer',
  examples: ['add 5 more corsages', '15 bouts not needed', '3 corsages extra', 'the heat got to 4 of the corsages'],
  find,
};
