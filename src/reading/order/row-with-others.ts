// A list of kinds with a row of prices behind it or ahead of it, some of them other flower work: "22 bouts, 4 corsages, 1 bridal bouquet:
// £16 / £32 / £120". Each price is of the kind in its place, and the bouquet's is none of ours.

import { pattern } from '../pattern.ts';
import { askedOnce } from '../text/asked-once.ts';
import { isSingle, type Token } from '../text/token.ts';

const service = 'delivery|setup|install|installation|labour|labor|hire';
const thing = `<filler>{0,2} (<piece>|<other>|${service})`;
const items = [
  pattern(`<count> (x|no)? ${thing}`),
  pattern(`${thing} (x|:|-|=|\\() <count> (\\))?`),
  pattern(`${thing} <count>`),
  pattern(`(a|an|the)? ${thing}`),
];
const joint = /^(,|\/|and|&|\+|plus|n|then)$/;
const leads = /^(:|-|=|at|@|,|\(|are|is|prices?|resp|respectively)$/;
const isJoint = (token: Token | undefined): boolean => token?.kind === 'line' || joint.test(token?.text ?? '');
const most = 8; // kinds

interface Item {
  readonly ours: boolean;
  readonly end: number;
}
const itemAt = (tokens: readonly Token[], index: number): Item | undefined => {
  for (const form of items) {
    const match = form.at(tokens, index, tokens.length);
    if (match === undefined) continue;
    const ours = tokens.slice(match.start, match.end).some(({ means }) => means['piece'] !== undefined && means['other'] === undefined);
    return { ours, end: match.end };
  }
  return undefined;
};

// The kinds from here on, one joint or a new line between them.
const listAt = (tokens: readonly Token[], start: number): { readonly items: readonly Item[]; readonly end: number } => {
  const listed: Item[] = [];
  let [index, end] = [start, start];
  while (listed.length < most) {
    const item = itemAt(tokens, index);
    if (item === undefined) break;
    listed.push(item);
    end = item.end;
    index = end;
    while (index < end + 2 && isJoint(tokens[index])) index += 1;
    if (index === end) break;
  }
  return { items: listed, end };
};

// Amounts with nothing but a joint between them; plain numbers only with strokes, as "16, 32, 120" may count.
const isAmount = ({ number }: Token): boolean => isSingle(number) && (number.form === 'money' || number.form === 'plain');
const rowAt = (tokens: readonly Token[], start: number): readonly number[] => {
  const places: number[] = [];
  for (let index = start; ; ) {
    const token = tokens[index];
    if (token === undefined || !isAmount(token)) return places;
    places.push(index);
    const mark = tokens[index + 1];
    const next = isJoint(mark) ? index + 2 : index + 1;
    const [money, another] = [token.number?.form === 'money', tokens[next]?.number?.form === 'money'];
    if (mark?.text !== '/' && !(money && another)) return places;
    index = next;
  }
};

/** `others`: the places of the prices that are of other work; none where the row is not as long as the list. */
export interface Row {
  readonly places: readonly number[];
  readonly others: readonly number[];
}
const rowOf = (listed: readonly Item[], places: readonly number[]): Row | undefined => {
  if (places.length < 2 || listed.length < 2 || !listed.some(({ ours }) => ours) || listed.every(({ ours }) => ours)) return undefined;
  return { places, others: listed.length === places.length ? places.filter((_, at) => listed[at]?.ours === false) : [] };
};

// "£16 / £32 / £120 x 2", "£16 / £32 a bunch": something else goes on with the last.
const goesOn = (next: Token | undefined): boolean =>
  next !== undefined && (next.number !== undefined || next.text === 'x' || next.text === 'a' || next.means['pack'] !== undefined);
const rowBehind = (tokens: readonly Token[], index: number): Row | undefined => {
  const { items: listed, end } = listAt(tokens, index);
  if (listed.length < 2) return undefined;
  let at = end;
  while (at < end + 3 && (tokens[at]?.kind === 'line' || leads.test(tokens[at]?.text ?? ''))) at += 1;
  const places = rowAt(tokens, at);
  // "1 bouquet £120 £140": with nothing ahead of it only a row of the same length is one.
  if (at === end && places.length !== listed.length) return undefined;
  return goesOn(tokens[(places.at(-1) ?? 0) + 1]) ? undefined : rowOf(listed, places);
};
const rowAhead = (tokens: readonly Token[], index: number): Row | undefined => {
  const places = rowAt(tokens, index);
  const last = places.at(-1);
  if (places.length < 2 || last === undefined) return undefined;
  const joined = tokens[last + 1]?.kind === 'line' || /^(for|:|-|=)$/.test(tokens[last + 1]?.text ?? '');
  return joined ? rowOf(listAt(tokens, last + 2).items, places) : undefined;
};

/** Such a row, where the message has one. */
export const rowWithOthers = askedOnce((tokens: readonly Token[]): Row | undefined => {
  const amounts = tokens.filter(({ number }) => number?.form === 'money' || number?.form === 'plain').length;
  if (amounts < 2 || !tokens.some(({ means, text }) => means['other'] !== undefined || /^(delivery|setup|install|hire)/.test(text)))
    return undefined;
  for (let index = 0; index < tokens.length; index++) {
    const row = rowBehind(tokens, index) ?? rowAhead(tokens, index);
    if (row !== undefined) return row;
  }
  return undefined;
});
