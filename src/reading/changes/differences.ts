// Corrections by a difference: "add 5 more bouts", "minus one bout", "2 fewer", "knock 2 quid off each".

import type { FactOf } from '../fact.ts';
import { isSpare } from '../order/spare-pieces.ts';
import { beginsAt, type Match, pattern } from '../pattern.ts';
import type { Unworded } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import { namesTax } from '../text/of-tax.ts';
import type { NumberRead, Token } from '../text/token.ts';
import { goodsBefore, otherGoods } from './other-goods.ts';
import { thanSaid } from './price-differences.ts';
import { reminds, takenBack } from './taken-back.ts';

type Change = Omit<FactOf<'change'>, 'words'>;

const some = '(<n:count>|a|an|another|one)';
const what = '(<material>|the|those|of the|of)? (<filler>)? (<p:piece>)';
const forms: readonly (readonly [ReturnType<typeof pattern>, number])[] = (
  [
    [
      `(add|adding|added|gain|gains|gaining|chuck in|throw in|stick in|put in|plus|and|also|tack on|pop in|+|include|adds) (on|in|another|us)? ${some} (more|extra|another|additional)? ${what} (please|pls|too|more|extra|as well)?`,
      1,
    ],
    [`(add|adding|chuck in|throw in|tack on|stick in|+|plus|and) (on|in|another)? <n:count> (more|extra|another|additional)`, 1],
    [`(add|adding|added) (on|in|another)? <n:count> (to that|to the order|on|to it|for the <role>|for <role>)?`, 1],
    [
      `(need|needs|want|wants|they want|we need|do|they need|make|making|ordering|order|wanting|gonna need|require|asked for|can we do|could do with|now wants|wants an)? (another|an extra|an additional|extra|an) (<n:count>)? (<material>|<filler>)? <p:piece>`,
      1,
    ],
    [
      `(need|want|they want|we need|do|order|they need|asked for|her|she wants|wants|he wants|now want)? (<n:count>|a couple) (more|extra|additional) (<material>)? (<p:piece>)?`,
      1,
    ],
    [`(plus|and|+|also|another|with) (another)? <n:count> (more)? for (the|his|her|their|my|our|her|both)? <r:role>`, 1],
    [
      `(minus|drop|lose|remove|take off|take out|take away|knock off|less|subtract|cancel|scrap|cut|delete|losing|dropping|ditch|bin|pull|minusing|forget|deduct) (out|off|away|of)? (the|those|these|my|our)? ${some} (of)? ${what} (off|out|please|pls)?`,
      -1,
    ],
    // "cancel the 2 extra bouts": what was added is taken off again.
    [
      `(cancel|scrap|forget|ignore|scratch|scrub|drop|lose|remove|take off|ditch|undo|bin|skip|delete|don't need|dont need|no need for) (about)? (the|those|that|my) ${some} (more|extra|additional) ${what} (please|pls|now|after all|too)?`,
      -1,
    ],
    [
      '(minus|drop|lose|remove|take off|take out|take away|knock off|subtract|losing|dropping|deduct) (out|off|away)? <n:count> (from|off|of the order|please|pls|,)?',
      -1,
    ],
    // A client drops from the order; a maker drops on the floor.
    [
      "(they|they've|theyve|they have|client|client's|clients|bride|bride's|couple|couple's|customer) (has|have|had|just)? (dropped|cancelled|taken off|cut|lost) (another)? <n:count> (of)? (the)? (<p:piece>)? (from the order|off the order)?",
      -1,
    ],
    ['(take|knock|cut) (off)? (the|those|these)? (<n:count>|a|an|one) (<material>)? (<p:piece>)? off (of)? (the)? (<p:piece>)?', -1],
    [`(<n:count>|one|a couple) (less|fewer) (<p:piece>)?`, -1],
    [`(<n:count>|one) <p:piece> (less|fewer)`, -1],
    [`one less <p:piece>`, -1],
    [
      '(up|increase|increased|raise|bump|bumped|go up|gone up|upped) (it|that|the|them|count|order|up)? (count|<p:piece>|order|numbers|number)? by <n:count>',
      1,
    ],
    [
      '(down|reduce|reduced|cut|drop|lower|go down|gone down|decrease|decreased|dropped) (it|that|the|them|count|order|back)? (count|<p:piece>|order|numbers|number)? by <n:count>',
      -1,
    ],
  ] as const
).map(([source, sign]) => [pattern(source), sign]);

// "double the bouts", "twice as many crowns", "half the corsages"
const factors: readonly (readonly [ReturnType<typeof pattern>, string])[] = (
  [
    ['(double|doubling|twice) (up)? (on)? (the|as many|all|all the)? (<p:piece>) (please|pls|now|order|count)?', '2'],
    ['(double|doubling) (the)? (order|count|number|numbers|quantity|qty) (please|pls|now)?', '2'],
    ['(double|doubling) (it|that|them) (all)? (please|pls|now)?', '2'],
    ['(triple|treble) (up)? (on)? (the|all|all the)? (<p:piece>|order|count|number|quantity|qty|it|that|them) (please|pls|now)?', '3'],
    ['(halve|cut in half) (the|all|all the)? (<p:piece>|order|count|number|quantity|qty|it|that|them) (please|pls|now)?', '0.5'],
    ['(the|all the)? <p:piece> (doubled|have doubled|has doubled)', '2'],
    ['(the|all the)? <p:piece> (halved|have halved|has halved)', '0.5'],
  ] as const
).map(([source, by]) => [pattern(source), by]);

/** A count times a factor; a whole message, so that "double ribbon" or "double check" is not one. */
export const countFactor = (tokens: readonly Token[], start: number, end: number): { match: Match; fact: Unworded } | undefined => {
  for (const [form, times] of factors) {
    const match = form.at(tokens, start, end);
    if (match !== undefined && match.end === end)
      return { match, fact: { fact: 'change', what: 'count', times, ...kindOf(match.kept['p']) } };
  }
  return undefined;
};

const comesTo = pattern(
  "(,|-)? (so|that's|thats|makes|making|makes it|now|leaves|leaving|=|which makes|so that's|so its|so it's) (it|us|that)? (at|on)? <n:count> (now|total|in all|altogether|in total|all up|of them|<piece>)",
);
const countOf = (match: Match): number => {
  const number = match.kept['n']?.number;
  return number === undefined ? 1 : Number(number.amount);
};

// "6 guests and 2 more": more of what was counted right before, whatever that is.
const moreOfOthers = (tokens: readonly Token[], index: number): boolean => {
  const joined = [index, index - 1].find((at) => /^(and|plus|&|\+|n|,|another)$/.test(tokens[at]?.text ?? ''));
  const thing = joined === undefined ? undefined : tokens[joined - 1];
  return thing?.kind === 'word' && thing.means['piece'] === undefined && tokens[(joined ?? 0) - 2]?.number?.form === 'plain';
};

const ofSpares = (tokens: readonly Token[], { start, end }: Match): boolean =>
  tokens
    .slice(start, end + 1)
    .some(({ means, text }, at) => /^(spare|spares)$/.test(text) || (means['piece'] !== undefined && isSpare(tokens, start + at)));

/** The price of what is added, whoever it is for. */
export const priceBehind = pattern(
  '(for (the|his|her|their|my|our|both){0,2} (<count>)? <role> (<role>)?)? (,)? ((at|@) <a:amount> (<each>)?|<a:money> (<each>)?|<a:plain> <each>)',
);
// "add a flower crown for the flower girl, 40"
const plainBehind = pattern('for (the|his|her|their|my|our)? <r:role> (,|-)? (<a:plain>)? (please|pls|thanks|ta|too){0,2}');
const one = /^(a|an|another|one|1)$/;
/** Whoever the one piece that is added is for, and its price where a number stands alone behind them. */
export const addedFor = (
  tokens: readonly Token[],
  { start, end }: Match,
  last: number,
): { wearer: string; amount: NumberRead | undefined; end: number } | undefined => {
  const match = plainBehind.at(tokens, end, last);
  const { r, a } = match?.kept ?? {};
  const wearer = r?.means['role'];
  if (match?.end !== last || wearer === undefined || wearer === 'rest' || /(s|men|folk)$/.test(r?.text ?? '')) return undefined;
  const amount = a?.number;
  if (amount?.max !== undefined || (amount !== undefined && Number(amount.amount) < 5)) return undefined;
  return tokens.slice(start, end).some(({ text }) => one.test(text)) ? { wearer, amount, end: match.end } : undefined;
};

const extraSize = pattern(
  '(extra|an extra) (large|big|small|long|short|wide|tall|full|mini|tiny|fancy|special|sturdy|chunky|thick|soft|dark)',
);
const isTakenOff = (next: Token | undefined): boolean =>
  next !== undefined &&
  (next.number !== undefined || next.means['owner'] !== undefined || /^(the|a|an|any|our|his|her|my)$/.test(next.text));
const asBefore = pattern('(at|@) (the)? same (price|rate|cost|each)'); // "5 more bouts at the same price"
const lost = /^(lost|broke|snapped|dropped|wrecked|ruined|binned|squashed|crushed|cracked|smashed)$/;
const formsAlone = forms.map(([form]) => form);
/** A difference in how many, if this place says one; no fact where more is refused and how many less is not said. */
export const countDifference = (tokens: readonly Token[], index: number, end: number): { match: Match; fact?: Unworded } | undefined => {
  if (!beginsAt(formsAlone, tokens, index)) return undefined;
  for (const [form, sign] of forms) {
    const match = form.at(tokens, index, end);
    if (match === undefined || match.kept['n']?.number?.max !== undefined) continue;
    // "gst extra, 12 bouts": the tax is extra, not the bouts.
    if (tokens[index]?.text === 'extra' && namesTax(tokens[index - 1])) return undefined;
    // "10% extra bouts": how many that is, nobody has said.
    if (tokens[index - 1]?.number?.form === 'percent') return undefined;
    // "groom extra large bout" says its size; "2 extra large corsages" may be two more, or two of that size.
    if (extraSize.in(tokens, index, Math.min(end, match.end + 1)) !== undefined) {
      // "12 extra large corsages at 40" orders them.
      const priced = tokens.slice(match.end, end).some(({ number, text }) => number?.form === 'money' || /^(at|@|each)$/.test(text));
      return priced && (tokens[index]?.number ?? tokens[index - 1]?.number) !== undefined ? undefined : { match };
    }
    // "a few extra bouts", "some more corsages": how many is not said.
    if (match.kept['n'] === undefined && /s$/.test(match.kept['p']?.text ?? '')) return { match };
    if (match.kept['p'] === undefined && moreOfOthers(tokens, index)) return undefined;
    // "lost 2 more, thats 5 lost now" tells of the work.
    if (sign > 0 && lost.test(tokens[index - 1]?.text ?? '')) return undefined;
    const next = tokens[match.end];
    // "added 2 bridesmaids" counts people, not pieces.
    if (match.kept['p'] === undefined && ['role', 'bench', 'ingredient', 'other', 'pack'].some((tag) => next?.means[tag] !== undefined))
      continue;
    if (match.kept['p'] === undefined && (goodsBefore(tokens, index) || otherGoods(tokens, match.end, end))) return undefined;
    if (ofSpares(tokens, match)) return undefined;
    const than = next?.text === 'than' && match.kept['p'] !== undefined ? thanSaid.at(tokens, match.end, end) : undefined;
    if (than !== undefined)
      return {
        match: { ...match, end: than.end },
        fact: { fact: 'change', what: 'count', by: sign * countOf(match), ...kindOf(match.kept['p']) },
      };
    if (next?.text === 'than') return { match }; // "6 more than yesterday"
    // "30 bouts less the groom's", "24 lapels less 10%": what is taken off stands behind.
    if (tokens[match.end - 1]?.text === 'less' && isTakenOff(next)) {
      if (match.kept['p'] !== undefined) return { match };
      continue; // "bridal party of 12 less the 2 babies"
    }
    // "another corsage at 28" is one more, at a price of its own; "add a crown at 60" is a line of the order.
    const oneMore =
      match.kept['p'] !== undefined && tokens.slice(index, match.end).some((token) => /^(another|extra|more|additional)$/.test(token.text));
    const priced = oneMore && (priceBehind.at(tokens, match.end, end) ?? asBefore.at(tokens, match.end, end)) !== undefined;
    if (!priced && (next?.means['each'] !== undefined || /^(@|left|at|remaining|go|since)$/.test(next?.text ?? ''))) return undefined;
    // "6 more and we're there" is what is left.
    if (
      /^(and|then|till|til|until)$/.test(next?.text ?? '') &&
      /^(we're|were|we|i'm|im|i|that's|thats|it's|its|done|finished)$/.test(tokens[match.end + 1]?.text ?? '')
    )
      return undefined;
    // "add 3 to that one" adds to the order; "3 more to make" does not.
    if (next?.text === 'to' && !/^(that|the|it|this|my|our|her|his|order|them)$/.test(tokens[match.end + 1]?.text ?? '')) return undefined;
    const piece = kindOf(match.kept['p']);
    // "3 less lapels, so 27 now": what it comes to says it all.
    const now = comesTo.at(tokens, match.end, end);
    const whole = now?.kept['n']?.number;
    if (now !== undefined && whole !== undefined && whole.max === undefined)
      return { match: { ...match, end: now.end }, fact: { fact: 'change', what: 'count', to: Number(whole.amount), ...piece } };
    const back = sign > 0 ? takenBack(tokens, match, end) : undefined;
    if (back === 'unsure') return { match };
    if (sign < 0 && reminds(tokens, index)) continue;
    const change: Change = { fact: 'change', what: 'count', by: (back === 'back' ? -1 : sign) * countOf(match), ...piece };
    return { match, fact: change };
  }
  return undefined;
};
