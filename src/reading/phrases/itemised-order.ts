// An order as it is pasted from an estimate or a spreadsheet, a line for each item: "10 x buttonhole @ £9.50 = £95.00", "BH-01  Buttonhole  9  $16.50".

import type { Fact } from '../fact.ts';
import type { Piece } from '../itemised/item-lines.ts';
import { type Sheet, sheetIn } from '../itemised/sheet.ts';
import { moneyOf, pieceFact, taxFact, wholeFact } from '../itemised/sheet-facts.ts';
import type { TaxLine, Total } from '../itemised/sums.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import type { Choice } from '../reading.ts';
import type { Stretch } from '../text/message.ts';
import { tellsOfTax } from '../text/of-tax.ts';
import { placesIn } from '../text/places-in.ts';
import type { Token } from '../text/token.ts';
import { taxAt } from './tax-basis.ts';

const held = ({ start, end }: Stretch): Finding => ({ start, end, held: true, whole: true });
const apart = (stretch: Stretch): Finding => ({ ...held(stretch), apart: true });
const silent = ({ start, end }: Stretch): Finding => ({ start, end });

// A line's pieces, without its number in the list, its code and what the line comes to: those are understood and told by nobody.
const ofPieces = (reader: Reader, sheet: Sheet): readonly Finding[] => {
  const shared = moneyOf(sheet);
  return sheet.items.flatMap((item): Finding[] => {
    if (item.is !== 'piece') return [item.is === 'other' ? apart(item) : held(item)];
    const { line, each } = item.figures;
    const sum = each === undefined ? undefined : line?.index;
    const told = (index: number): boolean =>
      index >= item.from && index !== sum && !(sum === index + 1 && reader.tokens[index]?.text === '=');
    const places = placesIn(item);
    const rest = places.filter((index) => !told(index));
    const read = found(
      reader,
      item.from,
      item.end,
      sheet.bare === 'open' ? [] : [pieceFact(item, sheet.bare, shared)],
      places.filter(told),
    );
    return [read, ...(rest.length === 0 ? [] : [{ ...silent(item), takes: rest }])];
  });
};

// "BH-01  Buttonhole  9  $16.50" with nothing that says whether the price is of one or of the nine.
const askBare = (reader: Reader, sheet: Sheet): Finding => {
  const shared = moneyOf(sheet);
  const pieces = sheet.items.filter((item) => item.is === 'piece');
  const [first] = pieces.filter(({ figures }) => figures.either !== undefined) as [Piece];
  const price = reader.words(first.figures.either?.index ?? first.start, (first.figures.either?.index ?? first.start) + 1);
  const choice = (bare: 'each' | 'line'): Choice => ({
    words: bare === 'each' ? `${price} each` : `${price} for the line`,
    facts: pieces.map((item) => ({ ...pieceFact(item, bare, shared), words: reader.words(item.from, item.end) }) as Fact),
  });
  return {
    ...silent(first),
    takes: [],
    asks: [{ about: 'price', why: 'each or all', words: price, choices: [choice('each'), choice('line')] }],
  };
};

const countIn = ({ items }: Sheet): number =>
  items.reduce((count, item) => count + (item.is === 'piece' ? Number(item.figures.count?.number.amount ?? 1) : 0), 0);

const ofTotal = (reader: Reader, sheet: Sheet, total: Total): Finding => {
  if (total.ofPieces) return total.amount.equals(countIn(sheet)) ? silent(total) : held(total);
  const stands = sheet.stands.get(total);
  if (stands === 'off') return held(total);
  // Whether "Total incl VAT" speaks of the lines is not known: its words are left to those who read tax.
  const isTaken = (index: number): boolean =>
    total.taxed === undefined || sheet.tax !== undefined || !tellsOfTax(reader.tokens[index] as Token);
  return found(reader, total.start, total.end, wholeFact(sheet, total), placesIn(total).filter(isTaken));
};

// Tax words elsewhere that say the other thing.
const saysOtherwise = (reader: Reader, { sums }: Sheet, basis: string): readonly Stretch[] => {
  const stretches: Stretch[] = [];
  for (let index = 0; index < reader.tokens.length; index++) {
    if (sums.some(({ start, end }) => index >= start && index < end)) continue;
    const read = taxAt(reader, index);
    if (read !== undefined && read.fact.basis !== basis) stretches.push(read.match);
  }
  return stretches;
};

const ofTax = (reader: Reader, sheet: Sheet): readonly Finding[] => {
  const taxes = sheet.sums.filter((each): each is TaxLine => each.is === 'tax');
  const totals = sheet.sums.filter((each): each is Total => each.is === 'total');
  const [at] = [...taxes, ...totals.filter(({ taxed }) => taxed !== undefined)];
  if (sheet.tax === undefined || at === undefined) return [];
  if (sheet.tax === 'both') return taxes.map(held);
  const otherwise = saysOtherwise(reader, sheet, sheet.tax);
  if (otherwise.length > 0) return [...taxes, ...otherwise].map(held);
  const fact = taxFact(sheet.tax, taxes, totals);
  const several = new Set(taxes.map(({ name }) => name)).size > 1;
  return [found(reader, at.start, at.end, [fact], []), ...taxes.map(several ? held : silent)];
};

const find = (reader: Reader): readonly Finding[] => {
  const { tokens } = reader;
  if (!tokens.some(({ kind }) => kind === 'line') || !tokens.some(({ means }) => means.piece !== undefined)) return [];
  const sheet = sheetIn(reader);
  if (sheet === undefined) return [];
  if (sheet.ofOthers) return [...sheet.items, ...sheet.sums].map(held);
  return [
    ...ofPieces(reader, sheet),
    ...(sheet.bare === 'open' ? [askBare(reader, sheet)] : []),
    ...(sheet.heading === undefined ? [] : [silent(sheet.heading)]),
    ...sheet.sums.flatMap((each) => (each.is === 'total' ? [ofTotal(reader, sheet, each)] : each.is === 'payment' ? [apart(each)] : [])),
    ...ofTax(reader, sheet),
  ];
};

export const itemisedOrder: Phrase = {
  name: 'itemised order',
  examples: ['1. 10 x buttonhole @ £9.50 = £95.00\n2. 4 x wrist corsage @ £24.00 = £96.00\n3. Delivery = £30.00\nTotal £221.00'],
  find,
};
