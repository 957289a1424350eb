// How goods are sold: "a bunch of 50", "box/144", "100g", "10 m spool", "10 stem bunch".

import { type Match, type Pattern, pattern } from '../pattern.ts';
import { firstWhere, isCount, isRangeOrChoice, type Token } from '../text/token.ts';
import { boxedAt } from './boxed.ts';
import { packCode, stemsShort } from './glued-sizes.ts';

export interface PackSize {
  readonly size?: number;
  readonly unit?: string;
  readonly per?: string;
  readonly quantity?: number;
}

const counted =
  '(stem|stems|pc|pcs|piece|pieces|pins|pin|count|ct|heads|nos|per|s|pk|pack|units|sheets|rolls|sticks|leaves|sprays|m|blooms|magnets)';
const forms: readonly (readonly [ReturnType<typeof pattern>, boolean])[] = (
  [
    ['(a|an|per|each) <k:pack> x <q:count>', true],
    [
      `(a|an|per|the|each|/|for a|in a)? <k:pack> (of|/|x|\\(|with|-|=|:|has|holds)? (about)? <n:count> (x)? (<u:pack>|${counted})? (\\))?`,
      false,
    ],
    ['(a|an|per|the|/|for a)? <k:pack> (of|/|x|\\(|-)? <m:length> (\\))?', false],
    ['(a|an|per|the|/|for a)? <k:pack> (of|/|x|\\()? <m:weight> (\\))?', false],
    ['(a|an|per|the|/|for a)? <m:length> (<k:pack>)', false],
    ['(a|an|per|the|/|for a)? <m:weight> (<k:pack>)', false],
    [`(a|per|/|for)? <n:count> (-)? (stem|stems|pc|pcs|piece|head|count|ct|pk|pack|stm) (/|per|a|in a|to a|to the|-)? <k:pack>`, false],
    ['<n:count> (per|to a|to the|in a|in the|/|in each) <k:pack>', false],
    ['(/|per|a|the|an) <k:pack>', false],
    ['for <n:count> (stem|stems|heads|blooms|pcs|pieces|pins|sheets|sticks)?', false],
    ['<n:count> for', false],
    ['<n:count> /', false],
    [`(of|x|\\(|/|pk|per|-) <n:count> (<u:pack>|${counted})? (\\))?`, false],
    [`<n:count> (stem|stems|pc|pcs|pieces|heads|count|ct|pk|stm|pins|s|nos|blooms)`, false],
    ['<q:count> (x)? <k:pack> (of)?', true],
    ['(per|a|/|/)? <m:weight>', false],
    ['(per|a|/)? <m:length>', false],
    ['<k:pack>', false],
  ] as const
).map(([source, quantity]) => [pattern(source), quantity]);

const soManyPer = forms[7]?.[0];
const wasPriced = (tokens: readonly Token[], start: number, end: number): boolean => {
  const words = tokens.slice(start, end);
  return (
    words.some(({ text }) => /^(was|were|now|used|from)$/.test(text)) &&
    !words.some(({ number, text }) => number?.form === 'money' || /[.,]\d{2}$/.test(text))
  );
};

// "per 10 stems": with no bunch or wrap said, the size is in stems.
const stems = (tokens: readonly Token[], match: Match): boolean =>
  match.kept['k'] === undefined && tokens.slice(match.start, match.end).some((token) => /^(stem|stems)$/.test(token.text));

// "tape 27m roll x 12 $31.20": twelve rolls of 27 m.
const manyRolls = pattern('<m:length> <k:pack> x <q:count>');
const isPriceBefore = (tokens: readonly Token[], index: number): boolean =>
  tokens[index - 1]?.number?.form === 'money' ||
  (tokens[index - 1]?.means['each'] !== undefined && tokens[index - 2]?.number?.form === 'money'); // "R22 each x 40"
// "statice x3 bunches", "gyp x5 @ £6": how many, not what one holds
const isSome = (tokens: readonly Token[], { start, end }: Match): boolean =>
  tokens[start - 1]?.means['ingredient'] !== undefined &&
  (/^(@|at)$/.test(tokens[end]?.text ?? '') || /^(bunches|wraps|boxes|bundles|rolls|reels|packs|bags)$/.test(tokens[end - 1]?.text ?? ''));
const inDozens = (token: Token): boolean => token.number?.inDozens === true;

/** What the stretch says about packs, and the tokens that say it. */
export const findPack = (tokens: readonly Token[], start: number, end: number): PackSize & { readonly used: readonly number[] } => {
  const used = new Set<number>();
  let found: PackSize = {};
  const take = (match: Match): void => {
    for (let index = match.start; index < match.end; index++) used.add(index);
  };
  const alone = onlyNumber(tokens, start, end);
  const box = Array.from({ length: end - start }, (_, at) => boxedAt(tokens, start + at)).find((found) => found !== undefined);
  if (box !== undefined && box.price < end) {
    for (let index = box.start; index < box.price; index++) used.add(index);
    return { size: box.size, per: box.per, used: [...used] };
  }
  const several = manyRolls.in(tokens, start, end);
  if (several !== undefined && box === undefined) {
    const { m, k, q } = several.kept;
    take(several);
    return {
      size: Number(m?.number?.amount),
      unit: m?.number?.unit ?? '',
      per: k?.means['pack'] ?? '',
      quantity: Number(q?.number?.amount),
      used: [...used],
    };
  }
  for (const [form, isQuantity] of forms) {
    // "10 m spool 18": the length is the size, so a bare number behind is the price.
    const match = measuredBeside(form, tokens, start, end) ? undefined : lastWeight(form, tokens, start, end);
    if (match === undefined || overlaps(match, used) || someOfThem(tokens, match) || tokens[match.start - 1]?.text === 'instead') continue;
    const { k, n, m, q } = match.kept;
    // "x3-4 bunches": how many is not said
    if ([n, m, q].some((token) => isRangeOrChoice(token?.number))) continue;
    if (alone && (n !== undefined || q !== undefined)) continue;
    // "marigold 60/kg, was 45": what they cost, and how they are sold.
    if (n !== undefined && form === soManyPer && (k?.means['pack'] === 'kg' || wasPriced(tokens, start, end))) continue;
    if (isQuantity) {
      const many = Number(q?.number?.amount);
      // "pins 200 box": a box of 200, not 200 boxes.
      const bundled = (many > 1 && /^(pack|pk|packet|pkt)$/.test(k?.text ?? '')) || (many >= 10 && /^(box|bag)$/.test(k?.text ?? '')); // "tape 6 pack"
      if ((many > 12 || bundled) && k !== undefined && !/s$/.test(k.text) && tokens[match.end - 1]?.text !== 'of') {
        if (found.size !== undefined) continue;
        found = { ...found, size: many, ...(found.per === undefined ? { per: k.means['pack'] ?? '' } : {}) };
        take(match);
        continue;
      }
      if (found.quantity !== undefined || (found.per !== undefined && found.per !== k?.means['pack'])) continue;
      found = {
        ...found,
        quantity: Number(q?.number?.amount),
        ...(found.per === undefined && k !== undefined ? { per: k.means['pack'] ?? '' } : {}),
      };
      take(match);
      continue;
    }
    if (n !== undefined && found.size !== undefined) continue;
    if (m !== undefined && found.size !== undefined) continue;
    if (n === undefined && m === undefined && found.per !== undefined) continue;
    if (tokens[match.start]?.number !== undefined && tokens[match.start]?.means !== undefined && n === undefined && m === undefined)
      continue;
    // "gyp £8 x 4": four of them at that price, not a bunch of four.
    if (tokens[match.start]?.text === 'x' && n !== undefined && (isPriceBefore(tokens, match.start) || isSome(tokens, match))) {
      const pack = tokens[match.end - 1]?.means['pack'];
      if (found.quantity === undefined)
        found = { ...found, quantity: Number(n.number?.amount), ...(pack === undefined || pack === 'stem' ? {} : { per: pack }) };
      take(match);
      continue;
    }
    const measured = m?.number;
    const many = n === undefined && m === undefined ? undefined : packsBefore(tokens, match, start);
    if (many !== undefined && found.quantity === undefined) {
      found = { ...found, quantity: many };
      used.add(match.start - 1);
    }
    found = {
      ...found,
      ...(n === undefined ? {} : { size: Number(n.number?.amount), ...(stems(tokens, match) ? { unit: 'stem' } : {}) }),
      ...(measured === undefined ? {} : { size: Number(measured.amount), unit: measured.unit ?? '' }),
      ...(k === undefined || found.per !== undefined ? {} : { per: k.means['pack'] ?? '' }),
    };
    take(match);
  }
  // "10st 8.95": so many stems, where it is no ordinal.
  const short = found.size === undefined ? firstWhere(tokens, start, end, stemsShort) : -1;
  const code = found.size === undefined ? firstWhere(tokens, start, end - 1, (token, index) => packCode(token, tokens[index + 1])) : -1;
  if (short >= 0) {
    found = { ...found, size: Number(tokens[short]?.number?.amount) };
    used.add(short);
  }
  if (code >= 0) {
    found = { ...found, size: Number(tokens[code + 1]?.text) };
    used.add(code + 1);
  }
  const dozen = found.size === undefined ? firstWhere(tokens, start, end, (token, index) => inDozens(token) && !used.has(index)) : -1;
  if (dozen >= 0) {
    found = { ...found, size: Number(tokens[dozen]?.number?.amount) };
    used.add(dozen);
    if (/^(per|a|the|\/)$/.test(tokens[dozen - 1]?.text ?? '') && dozen - 1 >= start) used.add(dozen - 1);
  }
  // A bunch of 10 stems is a bunch of 10.
  const { unit, ...rest } = found;
  return { ...rest, ...(unit === undefined || (unit === 'stem' && found.per !== undefined) ? {} : { unit }), used: [...used] };
};

// "2 bunches of 10 for £9", "5 wraps (10 stems)": how many of such packs.
const packsBefore = (tokens: readonly Token[], match: Match, start: number): number | undefined => {
  const [before, pack] = [tokens[match.start - 1], tokens[match.start]];
  if (match.start <= start || pack?.means['pack'] === undefined || !/s$/.test(pack.text) || !isCount(before)) return undefined;
  return Number(before?.number?.amount);
};

// "eucalyptus 2 bunches 11": two bunches, not bunches of eleven.
const someOfThem = (tokens: readonly Token[], { start, end }: Match): boolean =>
  end - start === 2 &&
  /s$/.test(tokens[start]?.text ?? '') &&
  tokens[start]?.means['pack'] !== undefined &&
  tokens[start + 1]?.number !== undefined &&
  tokens[start - 1]?.number?.form === 'plain';

// "wheat 11 bunch", "ribbon 12/roll": the only number of goods that are not free is their price, not their size.
const onlyNumber = (tokens: readonly Token[], start: number, end: number): boolean => {
  const stretch = tokens.slice(start, end);
  const day = (at: number): boolean => (stretch[at + 1] ?? stretch[at - 1])?.means['month'] !== undefined; // "from 1 feb"
  const numbers = stretch.filter((token, at) => token.number !== undefined && /^(plain|money)$/.test(token.number.form) && !day(at));
  return numbers.length === 1 && !stretch.some((token) => /^(free|foraged)$/.test(token.text));
};

// "wire 22g 2.5kg": the first is a gauge, the last is the pack.
const lastWeight = (form: Pattern, tokens: readonly Token[], start: number, end: number): Match | undefined => {
  let match = form.in(tokens, start, end);
  while (match?.kept['m']?.number?.form === 'weight' && anotherWeight(tokens, match.end, end)) match = form.in(tokens, match.end, end);
  // "ribbon 25mm x 10m": the first is its width.
  while (isWidth(match?.kept['m']) && tokens.slice(match?.end, end).some(isRun)) match = form.in(tokens, match?.end ?? end, end);
  return match;
};
const isWidth = (token: Token | undefined): boolean => token?.number?.form === 'length' && /^(mm|cm|in)$/.test(token.number.unit ?? '');
const isRun = (token: Token): boolean => token.number?.form === 'length' && !isWidth(token);
const anotherWeight = (tokens: readonly Token[], from: number, end: number): boolean =>
  tokens.slice(from, end).some((token) => token.number?.form === 'weight');

const bareSize = /^\(a\|an\|per\|the\|each/;
const measuredBeside = (form: Pattern, tokens: readonly Token[], start: number, end: number): boolean =>
  bareSize.test(form.source) &&
  tokens
    .slice(start, end)
    .some(
      (token, at) =>
        (token.number?.form === 'length' || token.number?.form === 'weight') && tokens[start + at + 1]?.means['pack'] !== undefined,
    ) &&
  !tokens.slice(start, end).some((token) => /^(of|\/|x)$/.test(token.text));

const overlaps = (match: Match, used: ReadonlySet<number>): boolean => {
  for (let index = match.start; index < match.end; index++) if (used.has(index)) return true;
  return false;
};
