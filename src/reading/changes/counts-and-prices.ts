// The counts and the prices that a correction names anew, each as one change.

import type { PieceKind } from '../../handbook/pieces.ts';
import { isHourBehindDay } from '../dates/hours-no-prices.ts';
import { findMentions } from '../order/mentions.ts';
import { findPrices } from '../order/prices.ts';
import { countOf } from '../order/read-order.ts';
import { pattern } from '../pattern.ts';
import type { Reader, Unworded } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { firstWhere, isCount, isSingle, type NumberRead } from '../text/token.ts';
import { ofThem } from './beside-values.ts';
import { kindsIn, ofKindsAhead } from './kinds-priced.ts';
import { differenceSaid, oldNumbers } from './old-numbers.ts';
import { priceChange } from './price-change.ts';
import { samePrice } from './same-price.ts';
import { inZones, type Zones } from './two-zones.ts';
import { wasAndIs } from './was-and-is.ts';

const isNow = pattern(
  '(the)? <p:piece> (count|number|qty|quantity|figure|numbers|total|tally)? (are|is|order|should be|should read|should say|to read|to be|now|needs to be|need to be|ought to be|were meant to be|were supposed to be|was meant to be|are meant to be|are supposed to be|go to|to|up to|down to|<upTo>|going|gone|changed to|=|:|drop to|from|be|at|should have been|will be|(are|is)? (going to|gonna) be|goes to|dropping to|gone to|reduced to|cut to|is now|are now)? (now|to|only|at|<upTo>|up to|<upTo>|down to|meant to be)? <n:count>',
);
const wrongCount = pattern('(wrong|incorrect) (number|count|qty|quantity|figure)');
const priceWord = /^(price|prices|cost|rate|charge|each|quote|pricing)$/;

// "£300 for the bouts" may be what they come to. Common practice, no source.
const perhapsAll = (price: NumberRead | undefined): boolean => Number(price?.amount) >= 150 && !/^(INR|ZAR)$/.test(price?.currency ?? '');

// "i typed $23 for the corsages, should be 32": the kind is named with the old price, and with it alone.
const kindPriced = (own: Reader, part: Part, zones: Zones): { readonly piece?: PieceKind } => {
  const mentions = findMentions(own, part);
  const [only, other] = new Set(mentions.map(({ kind }) => kind));
  const ofOld = mentions.every(({ index, countIndex }) => countIndex === undefined && inZones(zones.old, index));
  return only === undefined || other !== undefined || only === 'unspecified' || !ofOld ? {} : { piece: only };
};

export const countAndPrice = (own: Reader, part: Part, zones: Zones): Unworded[] => {
  const { tokens } = own;
  const facts: Unworded[] = [];
  const mentions = findMentions(own, part).filter((mention) => inZones(zones.fresh, mention.index));
  // "boutonniere qty revised to 45 nos": the number's own word names no kind, another one does.
  const uncounted = new Set(
    mentions.filter((mention) => mention.countIndex === undefined && mention.kind !== 'unspecified').map((mention) => mention.kind),
  );
  const [onlyKind] = uncounted.size === 1 && mentions.length === 2 ? uncounted : [];
  const used = new Set<number>();
  const { at: oldNumber, from, price: oldPrice, onlyPrice } = oldNumbers(tokens, part, zones);
  // "12 bouts not 10, and 3 corsages": what was said before is the kind's it stands beside.
  const ofOld = mentions.findLast((mention) => (mention.countIndex ?? oldNumber) < oldNumber) ?? mentions[0];
  for (const mention of mentions) {
    if (mention.countIndex === undefined || mention.exact === 1) continue;
    used.add(mention.countIndex);
    // "two of the corsages go to the vicar's wife": some of them are not all there are.
    if (ofThem.at(tokens, mention.countIndex + 1, part.end) !== undefined) continue;
    const { count } = countOf(mention);
    const by = differenceSaid(tokens, mention.countIndex);
    if (by !== 0) {
      facts.push({ fact: 'change', what: 'count', by: by * count, ...ofKind(mention.kind) });
      continue;
    }
    const rising = tokens.slice(part.start, mention.start).some((token) => /^(from|change|bump|up|move)$/.test(token.text));
    const span = rising ? wasAndIs(tokens, mention.countIndex) : undefined;
    facts.push({
      fact: 'change',
      what: 'count',
      to: span === undefined ? count : Number(span[1]),
      ...(span !== undefined ? { from: count } : from?.form === 'plain' && mention === ofOld ? { from: Number(from.amount) } : {}),
      ...(mention.kind !== 'unspecified' ? { piece: mention.kind } : onlyKind === undefined ? {} : { piece: onlyKind }),
    });
  }
  // "48 not 84 lapels": the kind is named with the old number.
  const oldMention =
    mentions.length > 0
      ? undefined
      : findMentions(own, part).find((mention) => mention.count !== undefined && inZones(zones.old, mention.countIndex ?? -1));
  const lone = tokens
    .slice(part.start, part.end)
    .flatMap((token, at) => (inZones(zones.fresh, part.start + at) && isCount(token) ? [part.start + at] : []));
  const [loneAt] = lone;
  if (oldMention !== undefined && loneAt !== undefined && lone.length === 1 && tokens[loneAt + 1]?.means['each'] === undefined) {
    used.add(loneAt);
    facts.push({
      fact: 'change',
      what: 'count',
      to: Number(tokens[loneAt]?.number?.amount),
      ...(isSingle(oldMention.count?.number) ? { from: countOf(oldMention).count } : {}),
      ...ofKind(oldMention.kind),
    });
  }
  // "wrong number of corsages, should be 8"
  const [lonely] = uncounted.size === 1 ? uncounted : [];
  if (
    lonely !== undefined &&
    loneAt !== undefined &&
    lone.length === 1 &&
    facts.length === 0 &&
    wrongCount.in(tokens, part.start, part.end)
  ) {
    used.add(loneAt);
    facts.push({ fact: 'change', what: 'count', to: Number(tokens[loneAt]?.number?.amount), piece: lonely });
  }
  for (let index = part.start; index < part.end; index++) {
    const match = isNow.at(tokens, index, part.end);
    const number = match?.kept['n'];
    const at = match === undefined ? -1 : match.end - 1;
    if (
      match === undefined ||
      number === undefined ||
      used.has(at) ||
      !inZones(zones.fresh, at) ||
      mentions.some((mention) => mention.index === match.start && mention.countIndex !== undefined)
    )
      continue;
    const next = tokens[match.end];
    if (
      next?.means['each'] !== undefined ||
      next?.means['piece'] !== undefined ||
      /^(stems?|blooms?|heads?|sprigs?)$/.test(next?.text ?? '') || // what goes into one
      tokens[at - 1]?.text === 'at' ||
      next?.means['taxName'] !== undefined
    )
      continue;
    used.add(at);
    const kind = match.kept['p']?.means['piece'];
    const span = wasAndIs(tokens, at);
    facts.push({
      fact: 'change',
      what: 'count',
      to: Number(span?.[1] ?? number.number?.amount),
      ...(span !== undefined ? { from: Number(span[0]) } : from?.form === 'plain' ? { from: Number(from.amount) } : {}),
      ...ofKind(kind),
    });
    index = match.end - 1;
  }
  // "not each" takes the basis back; "13 rather than 12 each" keeps it.
  const oldSays = (tag: string, priced: boolean): boolean =>
    zones.old.some(
      ([start, end]) =>
        tokens.slice(start, end).some((token) => token.means[tag] !== undefined) &&
        tokens.slice(start, end).some((token) => token.number !== undefined) === priced,
    );
  const wholeSaid = zones.fresh.some(([start, end]) =>
    tokens.slice(start, end).some((token) => token.means['all'] !== undefined || /^(overall|total|whole)$/.test(token.text)),
  );
  const negated = {
    each: oldSays('each', false) || oldSays('all', true) || wholeSaid,
    all: oldSays('all', false) || oldSays('each', true),
  };
  const named =
    samePrice(tokens, part.start, part.end) === undefined && tokens.slice(part.start, part.end).some((token) => priceWord.test(token.text));
  const prices = findPrices(own, used, undefined, part).filter(
    (price) =>
      inZones(zones.fresh, price.index) &&
      !isHourBehindDay(tokens, price.index) &&
      (price.per !== 'unsaid' || price.number.form === 'money' || price.at || named || oldSays('each', true) || wholeSaid),
  );
  // "bouts should be $14 each": the only kind named, with no number of its own.
  const kinds = new Set(
    mentions.filter((mention) => mention.countIndex === undefined && mention.kind !== 'unspecified').map((mention) => mention.kind),
  );
  const [kind, otherKind] = kinds;
  const allBefore = oldSays('all', true);
  const priceAlone = onlyPrice && (allBefore || oldSays('each', true) || !perhapsAll(from));
  const of =
    kind === undefined || otherKind !== undefined || mentions.some((mention) => mention.countIndex !== undefined)
      ? priceAlone && !allBefore && facts.length === 0
        ? kindPriced(own, part, zones)
        : {}
      : { piece: kind };
  for (const price of ofKindsAhead(prices, mentions, kindsIn(facts)))
    facts.push(
      priceChange(
        { ...of, ...price },
        negated,
        oldPrice,
        tokens.slice(part.start, part.end).some((token) => token.text === 'from'),
      ),
    );
  if (prices.length === 0 && (named || (priceAlone && lone.length === 1)) && facts.length === 0) {
    const at = firstWhere(
      tokens,
      part.start,
      part.end,
      (token, index) => inZones(zones.fresh, index) && token.number?.form === 'plain' && !used.has(index),
    );
    const number = at < 0 ? undefined : tokens[at]?.number;
    const span = wasAndIs(tokens, at);
    if (number !== undefined)
      facts.push({
        fact: 'change',
        what: 'price',
        to: span?.[1] ?? number.amount,
        ...(span !== undefined ? { from: span[0] } : from === undefined ? {} : { from: from.amount }),
        per: wholeSaid || allBefore ? 'all' : 'each',
        ...(priceAlone && !wholeSaid ? of : {}),
      });
  }
  return facts;
};
