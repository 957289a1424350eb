// What the flowers are: "dried", "all fresh", "half dried half fresh", "the corsages are fresh though".

import type { Material, PieceKind } from '../../handbook/pieces.ts';
import type { Fact } from '../fact.ts';
import { isPriceList } from '../goods/whole-list.ts';
import { exceptSome } from '../order/all-but-some.ts';
import { halvesOf } from '../order/half-and-half.ts';
import { isDoubted } from '../order/material-doubted.ts';
import { countsSome, shareOfThem, someOfThem } from '../order/share-of-them.ts';
import { anyIn, firstIn, pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import { placesIn } from '../text/places-in.ts';
import { wordList } from '../words/word-list.ts';

// Words that mean something else most of the time: only beside trade facts.
const weak = new Set(
  wordList(`
  dry, real, live, paper, plastic, fake, mixed, dries, silk, silks, latex, eternal, fresh, mixed media, bit of both, half n half, sola
`),
);
const notOf =
  /^(tape|ribbon|ribbons|bag|bags|towel|towels|box|boxes|up|ice|cleaning|cleaner|tea|coffee|air|start|water|paint|shirt|dress|wire|card|out|off|time|band|news|milk|bread|lot|bunch|batch|bucket|veg|scarf|tie|cup|cups|weather|january|july|spell|spells|skin|hands|eyes|mouth|throat|slope|ski|dock|wine|shampoo|humour|rot|ground|summer|winter|season|run)$/;
const verbBefore = /^(from|by|until|til|till|on|at|off|out|the|them|it|for|these|those|my|our|some|in|by|enough|all|well|\d+)$/;
const ofPieces = pattern(
  '(the|for the)? <p:piece> (are|is|will be|to be|all|being|in|stay|stays|staying|remain|remains|still|,|:|-|=)? (all|now|just)? <material>',
);
const beforePieces = pattern('<material> (for the|for|on the)? <p:piece>');
const negated = pattern("(not|no|nothing|isn't|isnt|aren't|arent|never|don't|dont|without) (all|just|do|want)? <material>");

// "fresh for the mums, dried for the lads": what each of them wears is no matter of all.
const forWearers = pattern('(for|on) (the|all the|all|his|her|my|our)? (<role>|<owner>|lads|boys|girls|ladies|men|kids|nans|grans)');
// "dried or fresh, not decided"
const oneOfTwo = ({ tokens }: Reader, index: number): boolean =>
  [-1, 1].some((way) => tokens[index + way]?.text === 'or' && tokens[index + 2 * way]?.means['material'] !== undefined);

const roughShare = /^(half|some|partly|most|few|third|quarter|couple)$/;

// "preserved roses" for an event are what it is made of; on a price list they are goods.
const tradeAround = (reader: Reader): boolean => reader.facts.some((fact) => ['pieces', 'price', 'date', 'title'].includes(fact.fact));
// "14 if dried, 17 if fresh": the price waits for it.
const pricedByMaterial = (reader: Reader): boolean => reader.facts.some((fact) => fact.fact === 'price' && fact.amounts !== undefined);
export const isMaterial = (reader: Reader, index: number): boolean => {
  const token = reader.tokens[index];
  if (token?.means['material'] === undefined || !reader.free(index)) return false;
  const before = reader.tokens[index - 1];
  if (someOfThem(reader, index) || (before?.text === 'if' && !pricedByMaterial(reader))) return false;
  if (before?.means['piece'] === undefined && forWearers.at(reader.tokens, index + 1, reader.tokens.length) !== undefined) return false;
  const next = reader.tokens[index + 1];
  if (
    next?.kind === 'word' &&
    (notOf.test(next.text) ||
      (next.means['ingredient'] !== undefined && !tradeAround(reader)) ||
      (next.means['pack'] !== undefined && !(/ (and|of) /.test(token.text) && next.text === 'stems')))
  )
    return false;
  if (/^(dry|dries)$/.test(token.text) && next !== undefined && (verbBefore.test(next.text) || next.number !== undefined)) return false;
  return (
    !(reader.tokens[index - 1]?.text === 'to' && /^(dry|dries|real|live|fresh)$/.test(token.text) && token.text !== 'fresh') &&
    !/^(we|i|they|can|will|must|should|need)$/.test(reader.tokens[index - 1]?.text ?? '')
  );
};

// "they picked silk", "it has to be real"
const chosen = [
  pattern('(material|materials|using|throughout|strictly)'),
  pattern(
    "(bride|groom|couple|client|customer|they|they'd|theyd|she|she'd|he|mum|family|planner) (wants|want|would like|like|likes|prefer|prefers|preferred|chose|picked|went|go|going|went for|going for|after|asked for|said)",
  ),
  pattern("(has|have|needs|need|must|should|will|it's|its) (to)? (all)? be (all)? <material>"),
  pattern('(they|they are|we are|all) going (all)? <material>'),
];
const trade = (reader: Reader): boolean =>
  anyIn(chosen, reader.tokens, 0, reader.tokens.length) ||
  reader.facts.some((fact) => ['pieces', 'price', 'date', 'tax', 'title', 'wearers'].includes(fact.fact)) ||
  reader.asks.some((ask) => ask.about === 'date' || ask.about === 'price' || ask.about === 'count') ||
  reader.tokens.some(
    (token) =>
      token.means['piece'] !== undefined ||
      token.means['month'] !== undefined ||
      token.number?.form === 'ordinal' ||
      /^(event|wedding|party|flowers|everything|gala|handover|ceremony|function)$/.test(token.text),
  ) ||
  reader.tokens.every(
    (token) =>
      token.kind !== 'word' ||
      token.means['weekday'] !== undefined ||
      token.means['month'] !== undefined ||
      token.means['material'] !== undefined ||
      /^(all|its|it's|it|for|this|one|is|are|please|pls|just|everything|the|only|plse|ok|so|they|want|they're|and|thanks|ta|go|goes|going|with|of|job|lot|stuff)$/.test(
        token.text,
      ),
  );

// "preserved + fresh", "fresh with a bit of dried": two of them in one piece of work.
const together = pattern(
  '(mix of|mixture of|mostly|mainly|half|part|some|bit of)? <a:material> (flowers|stuff|stems|mixed|mixed in|combined)? (and|+|&|n|with|plus|/|,|w|mixed with|mixed w|mixed in with) (half|part|some|a bit of|bits of|a few|a little|a touch of|touch of|few|some of the|also)? <b:material> (flowers|stuff|stems|bits|mix|mixed)?',
);
const bitOfEach = pattern('(a)? (bit|little|touch|some) (of)? <a:material> (,|and|&|+|n)? (a)? (bit|little|touch|some) (of)? <b:material>');
const mixedOf = (reader: Reader): Finding | undefined => {
  const match = firstIn([together, bitOfEach], reader.tokens, 0, reader.tokens.length);
  const [a, b] = [match?.kept['a']?.means['material'], match?.kept['b']?.means['material']];
  if (match === undefined || a === b || (a !== 'fresh' && b !== 'fresh')) return undefined;
  // With a kind on either side each material is that kind's own.
  const near = reader.tokens.slice(Math.max(0, match.start - 2), match.end + 1);
  if (near.some((token) => token.means['piece'] !== undefined) || /^(or|not|no)$/.test(reader.tokens[match.start - 1]?.text ?? ''))
    return undefined;
  const strong = [match.kept['a'], match.kept['b']].some((token) => token?.means['material'] !== 'fresh' && !weak.has(token?.text ?? ''));
  if (!strong && !trade(reader)) return undefined;
  if (!allFree(reader, match.start, match.end)) return undefined;
  return found(reader, match.start, match.end, [{ fact: 'material', material: 'mixed' }]);
};

// "21 each preserved or 14 each fresh": whoever chooses what they are has chosen the price. The two stand in the same order.
const priceOf = (reader: Reader, place: number, of: number): Fact[] => {
  const told = reader.facts.find((fact) => fact.fact === 'price' && fact.amounts?.length === of);
  if (told?.fact !== 'price') return [];
  const { amounts, ...rest } = told;
  const amount = amounts?.[place];
  return amount === undefined ? [] : [{ ...rest, amount }];
};

const find = (reader: Reader): Finding[] => {
  if (isPriceList(reader) && !anyIn(chosen, reader.tokens, 0, reader.tokens.length)) return [];
  const mixed = halvesOf(reader) ?? mixedOf(reader);
  if (mixed !== undefined) return [mixed];
  const places: number[] = [];
  for (let index = 0; index < reader.tokens.length; index++) if (isMaterial(reader, index)) places.push(index);
  if (places.length === 0) return [];
  const kinds = new Set(places.map((index) => reader.tokens[index]?.means['material']));
  // "fresh i think, maybe dried": beside another material a weak word is one too.
  const ofTrade = trade(reader) || (kinds.size > 1 && places.some((index) => !weak.has(reader.tokens[index]?.text ?? '')));
  const but = places.length === 1 ? exceptSome(reader) : [];
  if (but.length > 0) return but;
  const findings: Finding[] = [];
  const lines = reader.facts.filter((fact) => fact.fact === 'pieces');
  for (const index of places) {
    const token = reader.tokens[index];
    const material = token?.means['material'] as Material;
    if (token !== undefined && weak.has(token.text) && !ofTrade && !oneOfTwo(reader, index)) continue;
    if (kinds.size === 1 && (isDoubted(reader, index) || countsSome(reader, index))) {
      findings.push({ start: index, end: index + 1, held: true });
      continue;
    }
    // "mixed them up with the crowns" tells of a muddle.
    if (token?.text === 'mixed' && /^(them|it|up|those|these)$/.test(reader.tokens[index + 1]?.text ?? '')) continue;
    if (negated.at(reader.tokens, index - 1, index + 1) !== undefined || negated.at(reader.tokens, index - 2, index + 1) !== undefined)
      continue;
    // "30 bouts, half dried", "20 bouts, about half of them dried": what the others are is not said.
    const share = shareOfThem(reader, index) ?? reader.tokens[index - 1];
    if (kinds.size === 1 && roughShare.test(share?.text ?? '')) continue;
    if (
      lines.length > 1 &&
      lines.some((line) => line.fact === 'pieces' && line.material === material) &&
      reader.tokens[index + 1] !== undefined &&
      !reader.free(index + 1) &&
      kinds.size > 0 &&
      reader.tokens[index + 1]?.means['piece'] !== undefined
    ) {
      findings.push({ start: index, end: index + 1 }); // already part of its line
      continue;
    }
    let start = index;
    let piece: PieceKind | undefined;
    for (let from = Math.max(0, index - 5); from < index; from++) {
      const match = ofPieces.at(reader.tokens, from, index + 1);
      if (match?.end === index + 1 && allFree(reader, from, index + 1) && piece === undefined) {
        start = from;
        piece = match.kept['p']?.means['piece'] as PieceKind;
      }
    }
    // "12 bouts dried, 4 corsages fresh": right behind a piece that was counted.
    const counted = reader.tokens[index - 1]?.means['piece'] as PieceKind | undefined;
    if (piece === undefined && kinds.size > 1 && lines.length > 1 && counted !== undefined && !reader.free(index - 1)) piece = counted;
    const ahead = beforePieces.at(reader.tokens, index, reader.tokens.length);
    if (piece === undefined && ahead !== undefined && allFree(reader, index, ahead.end))
      piece = ahead.kept['p']?.means['piece'] as PieceKind;
    const whole = piece === undefined || piece === 'unspecified';
    findings.push(
      found(reader, start, ahead !== undefined && !whole && start === index ? ahead.end : index + 1, [
        whole ? { fact: 'material', material } : { fact: 'material', material, piece: piece as PieceKind },
      ]),
    );
  }
  const general = findings.filter((finding) => finding.facts?.some((fact) => fact.fact === 'material' && fact.piece === undefined));
  const said = new Set(general.flatMap((finding) => finding.facts?.map((fact) => (fact.fact === 'material' ? fact.material : '')) ?? []));
  if (said.size <= 1) return findings;
  const [first] = general;
  const choices = general.flatMap((finding) =>
    (finding.facts ?? []).map((fact) => ({ words: fact.fact === 'material' ? fact.material : '', facts: [fact] })),
  );
  const unique = choices.filter((choice, at) => choices.findIndex((other) => other.words === choice.words) === at);
  const takes = general.flatMap(placesIn);
  const words = reader.words(first?.start ?? 0, general.at(-1)?.end ?? 0);
  return [
    ...findings.filter((finding) => !general.includes(finding)),
    {
      start: first?.start ?? 0,
      end: general.at(-1)?.end ?? 0,
      takes,
      asks: [
        {
          about: 'material',
          why: 'which material',
          words,
          choices: unique.map((choice, at) => ({ ...choice, facts: [...choice.facts, ...priceOf(reader, at, unique.length)] })),
        },
      ],
    },
  ];
};

export const materialSaid: Phrase = {
  name: 'material',
  examples: ['dried', 'half dried half fresh', 'the corsages are fresh though'],
  find,
};
