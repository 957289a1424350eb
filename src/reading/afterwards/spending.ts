// Money really spent on stems and sundries: "spent 182.40 at the market", "the flowers came to 84 in the end", "actual stem cost 91.40".

import { firstAt, type Match, pattern } from '../pattern.ts';
import type { Part } from '../text/message.ts';
import { isSingle, type Token } from '../text/token.ts';

const shop =
  '(market|markets|flower market|wholesaler|wholesalers|supplier|suppliers|grower|growers|auction|merchant|merchants|cash and carry|cash & carry)';
const plants = "(stems|stem|flowers|flower|foliage|greenery|blooms|plants|wholesale|sundries|<ingredient>)('s)?";
const whole = '(everything|it all|the lot|the job|the whole lot|all of it)';
const thing = `((the|our|my|all the|all|more|some|extra)? (${shop}|${plants})|${whole})`;
const things = `${thing} ((and|,|&|\\+|n|plus){1,2} (the|some|a few|bits of)? ${plants}){0,4}`;
const inTheEnd = '(in the end|in total|all up|all told|altogether|total|all in|overall|after all|by the end|finally|all together)';
const about = '(a <all>|about|just|only|around|roughly|another|a further|an extra|nearly|exactly|us|me)';
const amount = '<n:amount>';
// "140 ex vat": the tax is the bill's, and not the order's.
const tax = '((<included>|<onTop>|plus|\\+|with|w) (the)? <tax>|<tax> (<included>|<onTop>))';

// Each names what the money went on, or says that it is the end's sum.
const forms = [
  `(we|i)? (have|had|ended up|only|just|also|'ve)? (spent|spending|paid|paying|shelled out|forked out) (${about}){0,2} ${amount} (${inTheEnd})? (at|on|for|from|in|to) ${things} (${inTheEnd})?`,
  `(we|i)? (have|had|'ve)? (spent|ended up spending) (${about}){0,2} ${amount} ${inTheEnd}`,
  `(we|i)? ended up spending (${about}){0,2} ${amount}`,
  `(the|our|my)? (stems|flowers|foliage|sundries|wholesale|(${shop}) (bill|run|trip|shop|invoice|total|order|spend)|(${shop})|(flower|flowers|stem|stems|foliage|sundries|wholesale|${shop}) (bill|invoice|total|spend|cost|costs)|${whole}|<ingredient>) (really|actually|all)? (came to|came in at|came out at|ended up (costing|being|at)?|worked out at|totalled|totaled|ran to|set us back|set me back|cost us|cost me|charged us|charged me) (${about}){0,2} ${amount} (${inTheEnd})?`,
  `(the|our|my)? ((${shop}) (bill|run|trip|shop|invoice|total)|(flower|flowers|stem|stems|foliage|sundries|wholesale) (bill|invoice)) (was|were|is|:|=|-)? (${about}){0,2} ${amount} (${inTheEnd})?`,
  `(the|our|my)? (stems|flowers|foliage|sundries|wholesale|market) (was|were|cost) (${about}){0,2} ${amount} ${inTheEnd}`,
  `(the)? (actual|real|true|final) (cost|costs|spend|total|outlay|bill) (of|on|for) ${things} (was|is|were|came to|:|=|-)? (${about}){0,2} ${amount} (${inTheEnd})?`,
  `(the)? (actual|real|true|final) (flower|flowers|stem|stems|foliage|sundries|wholesale|${shop}) (cost|costs|spend|total|outlay|bill)? (was|is|were|came to|cost|:|=|-)? (${about}){0,2} ${amount} (${inTheEnd})?`,
  `(the)? (actual|real|true) (cost|costs|spend|outlay) (was|is|were|came to|:|=|-)? (${about}){0,2} ${amount} (${inTheEnd})?`,
  `(it|that|they)? (really|actually|all)? cost (us|me) (${about}){0,2} ${amount} (in|for|on) ${things} (${inTheEnd})?`,
].map((source) => pattern(`${source} (${tax})?`));

// "and 14 on ribbon": more of the same telling.
const more = pattern(`(and|plus|,|&|\\+|then){1,2} (another|a further)? ${amount} (on|at|for|in|to) ${things}`);
// "spent 182.40" and no more: what it went on is asked.
const bare = pattern(`(we|i|so)? (have|'ve)? spent (${about}){0,2} ${amount} (${inTheEnd})?`);
const bounded = (tokens: readonly Token[], { start, end }: Part): boolean =>
  tokens
    .slice(start, end)
    .some(({ means, text }) => means['upTo'] !== undefined || (means['budget'] !== undefined && text !== 'spend') || text === 'can');
// "roses came in at 26 a bunch": what one pack costs, and not what all of them did.
const ofOnePack = pattern(`(${tax})? (,)? (a|an|per|/|each|the|by the|for (a|an|one|each)) <pack>`);
const settled = /^(actual|real|true|final)$/;

export interface Spent {
  readonly match: Match;
  readonly amount: string;
}

// "customer paid 3.50 for roses", "the bride has spent 200 on flowers": what others gave is no outlay of ours.
const others =
  /^(customer|customers|client|clients|couple|planner|venue|guest|guests|lady|woman|man|school|church|company|she|he|they|shes|hes|theyve|she's|he's|they've|they'd|who|someone|somebody|people|neighbour|friend|competitor|shop)$/;
const paid = /^(spent|spending|paid|paying|shelled out|forked out|have|had|'ve|only|just|also|ended up)$/;
const between = /^(has|have|had|'s|'ve|'d|just|already|only|also|really|normally|usually|once|never|always)$/;
const ofOthers = (tokens: readonly Token[], start: number, from: number): boolean => {
  let at = from - 1;
  while (at > start && between.test(tokens[at]?.text ?? '')) at -= 1;
  const who = at < start ? undefined : tokens[at];
  return who !== undefined && (others.test(who.text) || who.means['role'] !== undefined);
};

const spentIn = (match: Match): Spent[] => {
  const number = match.kept['n']?.number;
  return isSingle(number) ? [{ match, amount: number.amount }] : [];
};

/** What a sentence says was really spent. Money as typed; ranges and ceilings say nothing of it. */
export const spending = (tokens: readonly Token[], part: Part): readonly Spent[] => {
  for (let index = part.start; index < part.end; index++) {
    const match = firstAt(forms, tokens, index, part.end);
    if (match === undefined) continue;
    if (paid.test(tokens[index]?.text ?? '') && ofOthers(tokens, part.start, index)) return [];
    // "real flowers 91": what kind of flowers, and no sum; "final 85 each" is a price.
    const sure = !settled.test(tokens[match.start]?.text ?? '') || tokens[match.end]?.means['each'] === undefined;
    if (ofOnePack.at(tokens, match.end, part.end) !== undefined) return [];
    if (!sure || bounded(tokens, part) || tokens[match.end]?.means['each'] !== undefined) return [];
    const found = spentIn(match);
    for (let next = more.at(tokens, match.end, part.end); next !== undefined; next = more.at(tokens, next.end, part.end))
      found.push(...spentIn(next));
    return found;
  }
  const alone = bare.at(tokens, part.start, part.end);
  return alone?.end === part.end ? spentIn(alone) : [];
};
