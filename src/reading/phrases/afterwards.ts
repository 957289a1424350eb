// What it really cost and took, and steps ticked: "spent 182.40 at the market", "took 3 hours for 12", "3 unused", "ordered the statice", "boarded".

import type { PieceKind } from '../../handbook/pieces.ts';
import type { FactOf } from '../fact.ts';
import { itemName } from '../goods/item-name.ts';
import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';

const spent = pattern(
  '(we|i)? (spent|paid) (a total of|about|just)? <n:amount> (in total|all up|total)? (at|on|for|from|in)? (the)? (market|wholesaler|wholesalers|stems|flowers|ribbon|supplier|<ingredient>|wholesale)',
);
const took = [
  pattern(
    '(took|spent|taken|it took|that took) (us|me|about|a total of|just|nearly|roughly|over){0,2} <d:duration> (in total|all up|total|altogether)? (for|on|to make|to do|making|doing|to finish) (the|all|about|all the)? (<n:count>)? (of them)? (<p:piece>)?',
  ),
  pattern(
    '<n:count> (<p:piece>)? (took|taken|in|done in|made in|finished in|boxed in|all done in|done and dusted in) (us|me|about|just|only)? <d:duration>',
  ),
  pattern('(took) (us|me|about|a total of){0,2} <d:duration> (in total|all up|total|altogether|all in)?'),
];
const unused = pattern(
  '<n:count> (<i:ingredient>|<p:piece>|stems|stem)? (of)? (<ingredient>)? (unused|left over|leftover|not used|going spare|over|surplus|wasted)',
);
const steps: readonly (readonly [ReturnType<typeof pattern>, FactOf<'step'>['step']])[] = [
  [
    pattern("(have|i've|ive|we've|weve|just|i|we)? (ordered|placed the order for|order placed for|bought) (all)? (the|our|more|all the)? "),
    'ordered',
  ],
  [pattern("(have|i've|ive|we've|weve|just|i|we)? (hung|hung up|hanging) (up)? (all)? (the|our|some)? "), 'hung'],
  [pattern('(order placed|orders in|order is in|order sent|all ordered)'), 'ordered'],
  [pattern("(have|we've|weve|just|i|we){0,3} (ordered) (everything|it all|all of it|the lot)"), 'ordered'],
  [pattern("(have|we've|weve|just|i|we){0,3} (received|got) (everything|it all|all of it|the lot)"), 'received'],
  [
    pattern("(everything|it all|the lot|everything's|everythings) (is|are|has|have|'s)? (all)? (arrived|here|come|came|turned up)"),
    'received',
  ],
];
const arrivedAfter = pattern(
  "(is|are|has|have|'s|all)? (in|here|arrived|landed|turned up|come|came in|came|delivered|been delivered|received|come in)",
);
const hungAfter = pattern("(is|are|has|have|'s|all|been|now){0,3} (hung|hanging|hung up|up drying) (to dry|up|now)?");
const theirs = /^(it|hers|his|theirs|them|each|that|this|there)$/; // "14 roses in it"
const arrivedVerb = pattern('(received|got|picked up|collected) (the|our|all the)?');
const wholes: readonly (readonly [ReturnType<typeof pattern>, FactOf<'step'>['step']])[] = [
  [
    pattern(
      "(it's|its|they're|theyre|all|everything|everything's|the lot|job|all)? (is|are|of them)? (now|all)? (boarded|on the board|on boards|pinned to the board|on their boards) (up)? (now)?",
    ),
    'boarded',
  ],
  [
    pattern(
      "(it's|its|they're|theyre|all|everything|everything's|order|flowers)? (is|are)? (now|all)? (handed over|delivered|collected|picked up|dropped off) (now|today|to the venue|to the hall)?",
    ),
    'handed over',
  ],
  [
    pattern(
      "(the|this)? (event|wedding|party|job|order|it|it's|whole thing|one|gala|dance|function|couple)? (have|has|is|was|been|'s|are){0,2} (cancelled|canceled|called off)",
    ),
    'cancelled',
  ],
  [pattern('(cancel|call off) (the|this|that|our)? (whole)? (event|wedding|party|job|gala|dance|function)'), 'cancelled'],
  [pattern('(all|the|everything|bunches|flowers|stems|lot)? (is|are|been)? (now|all)? (hung|hanging|hung up|up drying)'), 'hung'],
  [pattern('(checked the drying|drying checked|drying is fine|checked the drying racks|all dry now|drying is done)'), 'drying checked'],
];

const kindOf = (match: Match): { piece?: PieceKind } => {
  const kind = match.kept['p']?.means['piece'] as PieceKind | undefined;
  return kind === undefined || kind === 'unspecified' ? {} : { piece: kind };
};

const minutes = (match: Match): number | undefined => {
  const number = match.kept['d']?.number;
  if (number === undefined || number.max !== undefined) return undefined;
  return number.unit === 'hour' ? Number(number.amount) * 60 : number.unit === 'min' ? Number(number.amount) : undefined;
};

const find = (reader: Reader): Finding[] =>
  reader
    .untouched()
    .slice(0, 40)
    .flatMap((part) => {
      const { tokens } = reader;
      const findings: Finding[] = [];
      const add = (match: Match, fact: Unworded): void => {
        if (!findings.some((other) => other.start < match.end && match.start < other.end))
          findings.push(found(reader, match.start, match.end, [fact]));
      };
      const addBoth = (match: Match, facts: readonly Unworded[]): void => {
        if (!findings.some((other) => other.start < match.end && match.start < other.end))
          findings.push(found(reader, match.start, match.end, facts));
      };
      const money = spent.in(tokens, part.start, part.end);
      if (money?.kept['n']?.number !== undefined) add(money, { fact: 'actual', what: 'spent', amount: money.kept['n'].number.amount });
      for (const form of took) {
        const match = form.in(tokens, part.start, part.end);
        const time = match === undefined ? undefined : minutes(match);
        if (match === undefined || time === undefined || part.end - part.start > 14) continue;
        if (/^(does|do|makes|make|can|about)$/.test(tokens[match.start - 1]?.text ?? '')) continue; // a habit, not this job
        const count = match.kept['n']?.number?.amount;
        if (count === undefined && match.kept['p'] === undefined && part.end - match.end > 1) continue;
        if (tokens.slice(part.start, match.start).some((token) => token.means['other'] !== undefined)) continue; // "the arch took 6 hours"
        const spent: Unworded = {
          fact: 'actual',
          what: 'minutes',
          minutes: time,
          ...(count === undefined ? {} : { count: Number(count) }),
          ...kindOf(match),
        };
        // "12 done in 90 min" says both what is made and how long it took.
        const finished = tokens.slice(match.start, match.end).some((token) => /^(done|made|finished|boxed)$/.test(token.text));
        if (finished && count !== undefined) addBoth(match, [{ fact: 'made', count: Number(count), ...kindOf(match) }, spent]);
        else add(match, spent);
      }
      const spare = unused.in(tokens, part.start, part.end);
      if (spare !== undefined && !/^(left over|over)$/.test('')) {
        const item = spare.kept['i']?.means['ingredient'];
        add(spare, {
          fact: 'actual',
          what: 'unused',
          count: Number(spare.kept['n']?.number?.amount),
          ...kindOf(spare),
          ...(item === undefined ? {} : { item }),
        });
      }
      for (const [form, step] of wholes) {
        const match = form.at(tokens, part.start, part.end);
        if (match !== undefined && match.end >= part.end - 1) add(match, { fact: 'step', step });
      }
      for (const [form, step] of steps) {
        const match = form.at(tokens, part.start, part.end);
        if (match === undefined) continue;
        const rest = tokens.slice(match.end, part.end);
        const known = rest.some((token) => token.means['ingredient'] !== undefined || /^(stems|flowers|foliage)$/.test(token.text));
        if (
          rest.some((token) => token.number !== undefined || token.means['piece'] !== undefined) ||
          (rest.length > 0 && !known) ||
          rest.length > 5
        )
          continue;
        const item = itemName(
          rest.filter((token) => token.means['ingredient'] !== undefined || Object.keys(token.means).length === 0),
          true,
        );
        add({ ...match, end: part.end }, { fact: 'step', step, ...(item === undefined ? {} : { item }) });
      }
      for (let index = part.start; index < Math.min(part.end, part.start + 4); index++) {
        const token = tokens[index];
        if (token?.means['ingredient'] === undefined) continue;
        const match = arrivedAfter.at(
          tokens,
          index + (tokens[index + 1]?.text === "'" || tokens[index + 1]?.text === 's' ? 2 : 1),
          part.end,
        );
        const hung = hungAfter.at(tokens, index + 1, part.end);
        if (hung !== undefined && hung.end >= part.end - 1)
          add({ ...hung, start: index }, { fact: 'step', step: 'hung', item: token.means['ingredient'] });
        else if (match !== undefined && match.end >= part.end - 1 && !theirs.test(tokens[match.end]?.text ?? ''))
          add({ ...match, start: index }, { fact: 'step', step: 'received', item: token.means['ingredient'] });
      }
      const got = arrivedVerb.at(tokens, part.start, part.end);
      const item = got === undefined ? undefined : tokens[got.end]?.means['ingredient'];
      if (got !== undefined && item !== undefined && got.end + 1 >= part.end - 1)
        add({ ...got, end: got.end + 1 }, { fact: 'step', step: 'received', item });
      return findings;
    });

export const afterwards: Phrase = {
  name: 'afterwards',
  examples: ['spent 182.40 at the market', 'took 3 hours for 12', '3 unused', 'ordered the statice', 'boarded'],
  find,
};
