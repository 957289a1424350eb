// Steps ticked in sentences: "ordered the statice", "ribbon's in", "boarded", "handed over".

import type { FactOf } from '../fact.ts';
import { itemName } from '../goods/item-name.ts';
import { type Match, pattern } from '../pattern.ts';
import type { Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isNameless, type Token } from '../text/token.ts';

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
      "(it's|its|they're|theyre|all|everything|everything's|the lot|job|all|now){0,3} (is|are|of them)? (now|all|both)? ((boxed|boxed up|packed|packed up|bagged|boarded|pinned up) (,|and|&|n|\\+|/){1,2} (labelled|labeled|named|tagged|ready|ready to go|chilled|in the cooler|in the fridge)|(labelled|labeled|named|tagged) (,|and|&|n|\\+|/){1,2} (boxed|boxed up|packed|packed up|bagged|boarded)) (up|now|too|x|!){0,2}",
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
      "(the|this|they've|they have|couple have|client has|client's)? (event|wedding|party|job|order|it|it's|whole thing|one|gala|dance|function|couple|event's|wedding's|party's|job's)? (have|has|is|was|been|'s|are|just){0,2} (cancelled|canceled|called off|called it off|called the wedding off|called the whole thing off)",
    ),
    'cancelled',
  ],
  [
    pattern(
      "(ok|so|sad news|bad news|,|-|unfortunately|sadly){0,3} (the|this|that|whole|their){0,2} (wedding|wedding's|event|event's|party|party's|gala|gala's|dance|function) (is|are|has been)? (all|now)? off (now|sadly|sorry|unfortunately|i'm afraid)?",
    ),
    'cancelled',
  ],
  [pattern('(cancel|call off) (the|this|that|our)? (whole)? (event|wedding|party|job|gala|dance|function)'), 'cancelled'],
  [pattern('(all|the|everything|bunches|flowers|stems|lot)? (is|are|been)? (now|all)? (hung|hanging|hung up|up drying)'), 'hung'],
  [pattern('(checked the drying|drying checked|drying is fine|checked the drying racks|all dry now|drying is done)'), 'drying checked'],
];

// "the gyp and euc": each by its own name.
const itemsIn = (tokens: readonly Token[]): string[] => {
  const names: Token[][] = [[]];
  for (const token of tokens) {
    if (/^(and|&|,|\+|n)$/.test(token.text)) names.push([]);
    else if (token.means['ingredient'] !== undefined || isNameless(token)) names.at(-1)?.push(token);
  }
  return names.flatMap((name) => itemName(name, true) ?? []);
};

export interface Ticked {
  readonly match: Match;
  readonly facts: readonly Unworded[];
}

/** The steps a sentence says are done. */
export const stepsTicked = (tokens: readonly Token[], part: Part): readonly Ticked[] => {
  const ticked: Ticked[] = [];
  const add = (match: Match, fact: Unworded): void => {
    ticked.push({ match, facts: [fact] });
  };
  for (const [form, step] of wholes) {
    const match = form.at(tokens, part.start, part.end);
    if (match !== undefined && match.end >= part.end - 1 && (match.end === part.end || tokens[match.end]?.number === undefined))
      add(match, { fact: 'step', step });
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
    const items = itemsIn(rest);
    const facts = items.length === 0 ? [{ fact: 'step', step } as const] : items.map((item) => ({ fact: 'step', step, item }) as const);
    ticked.push({ match: { ...match, end: part.end }, facts });
  }
  for (let index = part.start; index < Math.min(part.end, part.start + 4); index++) {
    const token = tokens[index];
    if (token?.means['ingredient'] === undefined) continue;
    const match = arrivedAfter.at(tokens, index + (tokens[index + 1]?.text === "'" || tokens[index + 1]?.text === 's' ? 2 : 1), part.end);
    const hung = hungAfter.at(tokens, index + 1, part.end);
    if (hung !== undefined && hung.end >= part.end - 1)
      add({ ...hung, start: index }, { fact: 'step', step: 'hung', item: token.means['ingredient'] });
    else if (
      match !== undefined &&
      match.end >= part.end - 1 &&
      !theirs.test(tokens[match.end]?.text ?? '') &&
      tokens[match.end]?.text !== 'stock' &&
      tokens[match.end]?.means['piece'] === undefined
    )
      add({ ...match, start: index }, { fact: 'step', step: 'received', item: token.means['ingredient'] });
  }
  const got = arrivedVerb.at(tokens, part.start, part.end);
  const item = got === undefined ? undefined : tokens[got.end]?.means['ingredient'];
  if (got !== undefined && item !== undefined && got.end + 1 >= part.end - 1)
    add({ ...got, end: got.end + 1 }, { fact: 'step', step: 'received', item });
  return ticked;
};
