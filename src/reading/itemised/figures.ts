// The numbers of one line of a quote sheet: how many, what each costs, what the line comes to. Where all three stand there, the count times the price is the line, or nothing is read.

import { type Decimal, decimal } from '../../values/decimal.ts';
import type { Reader } from '../phrase.ts';
import type { Stretch } from '../text/message.ts';
import { isCount, isSingle, type NumberRead, type Token } from '../text/token.ts';

export type Column = 'count' | 'each' | 'line';

interface Figure {
  readonly index: number;
  readonly number: NumberRead;
  readonly counts: boolean; // could be how many
  readonly column: Column | undefined; // said beside it
}

export interface Figures {
  readonly count?: Figure;
  readonly each?: Figure;
  readonly line?: Figure;
  /** What each costs, or what the line comes to: its words do not say. */
  readonly either?: Figure;
  readonly proven?: true; // count × each is the line
}

const pieceUnit = /^(nos?|pcs?|pces|units?|off)$/;

// `counted`: a number that may be how many stands before it, as in "10 bh x 9 = 90".
const columnOf = (tokens: readonly Token[], index: number, counts: boolean, counted: boolean): Column | undefined => {
  const [before, after] = [tokens[index - 1]?.text ?? '', tokens[index + 1]];
  if (/^(@|at)$/.test(before) || after?.means['each'] !== undefined || (after?.text === '/' && !counts)) return 'each';
  if (before === '=') return 'line';
  if (after?.text === 'x' || pieceUnit.test(after?.text ?? '') || /^(qty|quantity)$/.test(before)) return counts ? 'count' : undefined;
  if (before === 'x') return !counts || tokens[index - 2]?.number !== undefined ? 'each' : counted ? undefined : 'count'; // "bh 10 x 9 = 90"
  return after?.means['all'] === undefined ? undefined : 'line';
};

const numberOf = (amount: string): NumberRead => ({ form: 'plain', amount });

// "x 5 – 19": a dash between blanks parts two columns, and is no range.
const partedRange = ({ message: { clean } }: Reader, token: Token): readonly [string, string] | undefined => {
  const typed = clean.text.slice(token.start, token.end);
  const [, first, second] = /^(\d{1,4}) +- +(\d{1,5}(?:\.\d{1,2})?)$/.exec(typed) ?? [];
  return first === undefined || second === undefined ? undefined : [first, second];
};

/** The figures in a line; undefined where one of them is rough, a range, a day or an hour. */
const figuresIn = (reader: Reader, { start, end }: Stretch): readonly Figure[] | undefined => {
  const { tokens } = reader;
  const figures: Figure[] = [];
  for (let index = start; index < end; index++) {
    const token = tokens[index] as Token;
    const { number } = token;
    if (number === undefined || /^(length|weight|percent|duration)$/.test(number.form)) continue;
    if (number.form !== 'plain' && number.form !== 'money') return undefined;
    if (!isSingle(number)) {
      const parted = partedRange(reader, token);
      if (parted === undefined) return undefined;
      const [first, second] = parted;
      figures.push({ index, number: numberOf(first), counts: true, column: 'count' });
      const each = tokens[index + 1]?.means['each'] !== undefined;
      figures.push({ index, number: numberOf(second), counts: false, column: each ? 'each' : undefined });
      continue;
    }
    if (number.approx === true) return undefined;
    const counts = isCount(token) && Number(number.amount) > 0;
    figures.push({
      index,
      number,
      counts,
      column: columnOf(
        tokens,
        index,
        counts,
        figures.some((each) => each.counts),
      ),
    });
  }
  return figures;
};

const fits = ({ column, counts }: Figure, as: Column): boolean => (column ?? as) === as && (as !== 'count' || counts);

const comesTo = (count: Figure, each: Figure, line: Figure): boolean =>
  decimal(count.number.amount).times(each.number.amount).equals(line.number.amount);

// Of three, each in its column: by the heading, or as they are usually written.
const usual: readonly (readonly Column[])[] = [
  ['count', 'each', 'line'],
  ['each', 'count', 'line'],
];
const ofThree = (figures: readonly Figure[], heading: readonly Column[] | undefined): Figures | undefined => {
  for (const columns of heading?.length === 3 ? [heading] : usual) {
    if (!figures.every((figure, at) => fits(figure, columns[at] as Column))) continue;
    const [count, each, line] = (['count', 'each', 'line'] as const).map((column) => figures[columns.indexOf(column)]);
    if (count !== undefined && each !== undefined && line !== undefined && comesTo(count, each, line))
      return { count, each, line, proven: true };
  }
  return undefined;
};

const ofTwo = (first: Figure, second: Figure, heading: readonly Column[] | undefined): Figures | undefined => {
  if (heading?.length === 2) {
    const [one, other] = heading as [Column, Column];
    return fits(first, one) && fits(second, other) ? { [one]: first, [other]: second } : undefined;
  }
  const isCountOf = (figure: Figure): boolean => fits(figure, 'count');
  const counted =
    first.column === 'count' || second.column === 'count' ? [first, second].find(({ column }) => column === 'count') : undefined;
  const count = counted ?? (isCountOf(first) ? first : isCountOf(second) ? second : undefined);
  if (count === undefined) return undefined;
  const other = count === first ? second : first;
  if (other.column === 'count') return undefined;
  if (other.column !== undefined) return { count, [other.column]: other };
  return Number(count.number.amount) === 1 ? { count, each: other } : { count, either: other };
};

/** What the numbers of a line are; undefined where that is not sure. */
export const figuresOf = (reader: Reader, stretch: Stretch, heading: readonly Column[] | undefined): Figures | undefined => {
  const figures = figuresIn(reader, stretch);
  const [first, second, third, more] = figures ?? [];
  if (figures === undefined || first === undefined) return undefined;
  // "Buttonhole, 2 roses, 10 @ £9 = £90": a number ahead of three that agree is of what it is made of.
  if (more !== undefined) return figures.length === 4 && first.number.form === 'plain' ? ofThree(figures.slice(1), heading) : undefined;
  if (third !== undefined) return ofThree(figures, heading);
  if (second !== undefined) return ofTwo(first, second, heading);
  return fits(first, 'count') && first.column !== 'each' ? { count: first } : { either: first };
};

/** The sum a line of other work comes to, whatever it is counted in: "18 m @ R420/m = R7 560". */
export const sumOf = (reader: Reader, stretch: Stretch, figures: Figures | undefined): Decimal | undefined => {
  const said = figuresIn(reader, stretch)?.filter(({ column }) => column === 'line') ?? [];
  const [only] = said;
  if (said.length === 1 && only !== undefined) return decimal(only.number.amount);
  return figures?.count === undefined && figures?.either !== undefined ? decimal(figures.either.number.amount) : lineOf(figures);
};

/** What the line comes to by its figures. */
export const lineOf = (figures: Figures | undefined): Decimal | undefined => {
  if (figures?.line !== undefined) return decimal(figures.line.number.amount);
  if (figures?.count === undefined || figures.each === undefined) return undefined;
  return decimal(figures.count.number.amount).times(figures.each.number.amount);
};
