// Compares a reading with what a corpus line expects, field by field: right, asked, missed or wrong.
// A number that is there and differs is wrong; a field that is not there is missed, or asked when a question about it was put.

import type { Fact, FactOf } from '../../../src/reading/fact.ts';
import type { Reading } from '../../../src/reading/reading.ts';

export type Verdict = 'right' | 'asked' | 'missed' | 'wrong';
export interface FieldVerdict {
  readonly field: string;
  readonly verdict: Verdict;
  readonly expected: unknown;
  readonly got: unknown;
}

type Json = Readonly<Record<string, unknown>>;
export interface CorpusLine {
  readonly id: string;
  readonly text: string;
  readonly expect: Json;
}

const of = <N extends Fact['fact']>(facts: readonly Fact[], name: N): FactOf<N>[] =>
  facts.filter((fact): fact is FactOf<N> => fact.fact === name);

const intentOf: Readonly<Record<Fact['fact'], readonly string[]>> = {
  pieces: ['quote'],
  quoted: ['event'],
  care: ['event'],
  calendar: ['event'],
  unread: ['event'],
  price: ['quote'],
  tax: ['quote'],
  material: ['event', 'quote'],
  date: ['event'],
  title: ['event'],
  made: ['progress'],
  broke: ['progress'],
  left: ['progress'],
  change: ['correction'],
  undo: ['correction'],
  question: ['question'],
  recipe: ['recipe'],
  pack: ['pricelist'],
  packed: ['pricelist'],
  crew: ['crew'],
  wearers: ['wearers'],
  rule: ['correction', 'event'],
  actual: ['progress', 'crew'],
  step: ['progress', 'event'],
  drying: ['recipe', 'event'],
};

const number = (value: unknown): number | undefined => (value === undefined || value === null ? undefined : Number(value));
const same = (a: unknown, b: unknown): boolean => {
  if (typeof a === 'number' || typeof b === 'number') return Math.abs(Number(a) - Number(b)) < 0.005;
  return JSON.stringify(a) === JSON.stringify(b);
};

const choiceFacts = (reading: Reading): Fact[] => reading.asks.flatMap((ask) => ask.choices.flatMap((choice) => choice.facts));

const sumByType = (lines: readonly { type: string; count: number | null }[]): Map<string, number> => {
  const sums = new Map<string, number>();
  for (const line of lines) sums.set(line.type, (sums.get(line.type) ?? 0) + (line.count ?? 0));
  return sums;
};

interface PieceLine {
  readonly type: string;
  readonly count: number | null;
  readonly countMax?: number;
  readonly approx?: boolean;
  readonly unitPrice?: number;
  readonly unitPriceMax?: number;
  readonly linePrice?: number;
}

const pieceLines = (facts: readonly Fact[]): PieceLine[] => [
  ...of(facts, 'pieces').map((fact) => ({
    type: fact.piece,
    count: fact.count,
    ...(fact.countMax === undefined ? {} : { countMax: fact.countMax }),
    ...(fact.approx === undefined ? {} : { approx: true }),
    ...(fact.price?.per === 'each'
      ? {
          unitPrice: Number(fact.price.amount),
          ...(fact.price.amountMax === undefined ? {} : { unitPriceMax: Number(fact.price.amountMax) }),
        }
      : {}),
    ...(fact.price?.per === 'line' ? { linePrice: Number(fact.price.amount) } : {}),
  })),
  ...of(facts, 'change')
    .filter((fact) => fact.what === 'count' && fact.to !== undefined)
    .map((fact) => ({ type: fact.piece ?? 'unspecified', count: Number(fact.to) })),
];

// "bouts should be $14 each": a kind's new price, with no claim about how many.
const priceOf = (facts: readonly Fact[], type: string): number | undefined => {
  const changed = of(facts, 'change').find((fact) => fact.what === 'price' && fact.piece === type && fact.to !== undefined);
  return number(changed?.to ?? of(facts, 'price').find((fact) => fact.piece === type)?.amount);
};

const comparePieces = (expected: readonly PieceLine[], reading: Reading): FieldVerdict[] => {
  const got = pieceLines(reading.facts);
  const want = sumByType(expected.filter((line) => typeof line.count === 'number'));
  const have = sumByType(got);
  const asked = reading.asks.some((ask) => ask.about === 'count' || ask.about === 'piece');
  const verdicts: FieldVerdict[] = [];
  for (const [type, count] of want) {
    const found = have.get(type);
    verdicts.push({
      field: `pieces.${type}`,
      expected: count,
      got: found,
      verdict: found === undefined ? (asked ? 'asked' : 'missed') : found === count ? 'right' : 'wrong',
    });
  }
  for (const [type, count] of have)
    if (!want.has(type)) verdicts.push({ field: `pieces.${type}`, expected: undefined, got: count, verdict: 'wrong' });
  const common = of(reading.facts, 'price').find((fact) => fact.per === 'each' && fact.piece === undefined);
  for (const line of expected) {
    const mine = got.filter((each) => each.type === line.type);
    for (const field of ['unitPrice', 'unitPriceMax', 'linePrice', 'countMax', 'approx'] as const) {
      if (line[field] === undefined) continue;
      const values = mine.map((each) => each[field]).filter((value) => value !== undefined);
      const own = field === 'unitPrice' ? priceOf(reading.facts, line.type) : undefined;
      if (values.length === 0 && own !== undefined) values.push(own);
      if (values.length === 0 && field === 'unitPrice' && common !== undefined) values.push(Number(common.amount));
      const verdict = values.some((value) => same(value, line[field]))
        ? 'right'
        : values.length === 0
          ? reading.asks.length > 0
            ? 'asked'
            : 'missed'
          : 'wrong';
      verdicts.push({ field: `pieces.${line.type}.${field}`, expected: line[field], got: values[0], verdict });
    }
  }
  if (expected.length === 0 && have.size === 0) verdicts.push({ field: 'pieces', expected: [], got: [], verdict: 'right' });
  return verdicts;
};

// The plain fields: what a corpus field is called, where the facts keep it.
const fields = (facts: readonly Fact[]): Record<string, unknown> => {
  const price = of(facts, 'price').filter((fact) => fact.piece === undefined);
  const each = price.find((fact) => fact.per === 'each');
  const all = price.find((fact) => fact.per === 'all');
  const changes = of(facts, 'change');
  const change = (what: FactOf<'change'>['what']) => changes.find((fact) => fact.what === what);
  const priceTo = changes.find((fact) => fact.what === 'price' && fact.to !== undefined);
  const priceBy = changes.find((fact) => fact.what === 'price' && fact.by !== undefined);
  const recount = changes.find((fact) => fact.what === 'count' && fact.to !== undefined && fact.piece === undefined);
  const tax = of(facts, 'tax')[0];
  const packs = of(facts, 'pack');
  const basis = tax?.basis ?? packs[0]?.basis ?? (change('tax')?.to as string | undefined);
  const date = of(facts, 'date').find((fact) => fact.of === undefined) ?? of(facts, 'date')[0];
  const made = of(facts, 'made');
  const question = of(facts, 'question')[0];
  const recipe = of(facts, 'recipe');
  const crew = of(facts, 'crew')[0];
  const wearers = of(facts, 'wearers')[0];
  const lines = recipe.flatMap((fact) => fact.lines);
  const perPiece = recipe.find((fact) => fact.pieces !== undefined);
  const stemLine = recipe.flatMap((fact) =>
    fact.lines.length === 1 && fact.lines[0]?.stems !== undefined ? [{ stems: fact.lines[0].stems, pieces: fact.pieces ?? 1 }] : [],
  )[0];
  const line = of(facts, 'pieces');
  const linePrice = line.find((fact) => fact.price !== undefined)?.price;
  const sameKind = line.every((fact) => fact.price?.kind === linePrice?.kind) ? linePrice?.kind : undefined;
  const kindSaid = (each ?? all)?.kind ?? sameKind;
  const counted = made.filter((fact) => fact.count !== undefined && fact.stage === undefined && fact.remade === undefined);
  return {
    unitPrice:
      number(each?.amount) ??
      (priceTo !== undefined && priceTo.per !== 'all' ? number(priceTo.to) : undefined) ??
      (line.length === 1 && line[0]?.price?.per === 'each' ? Number(line[0].price.amount) : undefined),
    unitPriceMax: number(each?.amountMax),
    unitPrices: each?.amounts?.map(Number),
    totalPrice:
      number(all?.amount) ??
      (priceTo !== undefined && priceTo.per !== 'each' ? number(priceTo.to) : undefined) ??
      (line.length === 1 && line[0]?.price?.per === 'line' ? Number(line[0].price.amount) : undefined),
    totalPriceMax: number(all?.amountMax),
    priceIs: kindSaid === 'up to' ? 'max' : kindSaid,
    currency:
      each?.currency ??
      all?.currency ??
      priceTo?.currency ??
      priceBy?.currency ??
      packs[0]?.currency ??
      crew?.currency ??
      linePrice?.currency,
    symbol: each?.symbol ?? all?.symbol ?? priceTo?.symbol ?? priceBy?.symbol ?? packs[0]?.symbol ?? crew?.symbol ?? linePrice?.symbol,
    tax: basis === 'included' ? 'inc' : basis === 'on top' ? 'ex' : basis === 'none' ? 'none' : 'unknown',
    taxName: tax?.name ?? packs[0]?.taxName ?? change('tax')?.name,
    totalCoversOther: all?.coversOther,
    material:
      of(facts, 'material').find((fact) => fact.piece === undefined)?.material ??
      change('material')?.to ??
      of(facts, 'material')[0]?.material ??
      line.find((fact) => fact.material !== undefined)?.material,
    date: date?.date ?? (change('date')?.to as string | undefined) ?? crew?.date ?? question?.date,
    time: date?.time ?? change('time')?.to ?? of(facts, 'date').find((fact) => fact.of === 'hand over')?.time,
    made: number(counted[0]?.count ?? change('made')?.to),
    madeType: (counted[0] ?? made[0])?.piece ?? change('made')?.piece,
    madePieces: counted.map((fact) => ({ type: fact.piece ?? 'unspecified', count: fact.count })),
    broken: of(facts, 'broke')[0]?.count ?? number(change('broke')?.to),
    target: made.find((fact) => fact.of !== undefined)?.of,
    remaining: of(facts, 'left')[0]?.count,
    allDone: made.some((fact) => fact.all === true) ? (made.find((fact) => fact.all === true)?.piece ?? true) : undefined,
    cumulative: made.some((fact) => fact.total === true) ? true : undefined,
    addsToPrevious: counted.length > 0 && !counted.some((fact) => fact.total === true) ? true : undefined,
    remade: made.find((fact) => fact.remade === true)?.count,
    spares: made.find((fact) => fact.spares !== undefined)?.spares,
    stage: made.find((fact) => fact.stage !== undefined)?.stage,
    stageCount: made.find((fact) => fact.stage !== undefined)?.count,
    fraction: number(made.find((fact) => fact.fraction !== undefined)?.fraction),
    undo: of(facts, 'undo').length > 0 ? true : undefined,
    shiftDays: number(changes.find((fact) => fact.what === 'date' && fact.by !== undefined)?.by),
    priceDelta: number(changes.find((fact) => fact.what === 'price' && fact.by !== undefined)?.by),
    newValue: number(change('number')?.to ?? recount?.to),
    asks: question?.asks,
    askType: question?.piece,
    askNumber: question?.number ?? number(question?.amount),
    forType: recipe[0]?.piece,
    perPieces: perPiece?.pieces,
    stemsPerPiece: stemLine === undefined ? undefined : stemLine.stems / stemLine.pieces,
    people: crew?.people,
    away: crew?.away === true ? crew.people : undefined,
    hoursEach: crew?.hours,
    totalHours: crew?.totalHours,
    wage: number(crew?.wage),
    piecesPerHour: crew?.piecesPerHour,
    minutesPerPiece: crew?.minutesPerPiece,
    wearersTotal: wearers?.total ?? wearers?.wearers.reduce((sum, each) => sum + each.count, 0), // unsaid, it is the list counted up
    lines,
    packs,
    wearersList: wearers?.wearers ?? [],
    changes,
  };
};

const compareList = (field: string, expected: readonly Json[], got: readonly Json[]): FieldVerdict[] =>
  expected.flatMap((want, at) => {
    const have = got[at];
    return Object.entries(want).map(([key, value]): FieldVerdict => {
      const mine = have?.[key];
      return {
        field: `${field}.${key}`,
        expected: value,
        got: mine,
        verdict: mine === undefined ? 'missed' : same(mine, value) ? 'right' : 'wrong',
      };
    });
  });

const askCodes: Readonly<Record<string, readonly string[]>> = {
  startDate: ['start', 'latestStart'],
  wholesale: ['spend'],
  made: ['remaining', 'summary'],
  broken: ['remaining'],
  countForBudget: ['countFor'],
  taxAmount: ['taxStatus'],
  unitPrice: ['price'],
  totalPrice: ['total'],
};

const compareField = (field: string, value: unknown, reading: Reading, mine: Record<string, unknown>, expect: Json): FieldVerdict[] => {
  const got = mine[field];
  const asked = reading.asks.length > 0 || reading.problems.length > 0;
  const one = (verdict: Verdict, shown: unknown = got): FieldVerdict[] => [{ field, expected: value, got: shown, verdict }];
  const plain = (): FieldVerdict[] => one(same(got, value) ? 'right' : got === undefined ? (asked ? 'asked' : 'missed') : 'wrong');
  switch (field) {
    case 'intent':
    case 'intentAlso':
    case 'note':
    case 'confirmOk':
    case 'canDecline':
    case 'otherItems':
    case 'day':
      return [];
    case 'pieces':
      return comparePieces(value as PieceLine[], reading);
    case 'date': {
      if (value === null) {
        const stored =
          of(reading.facts, 'date').length > 0 || of(reading.facts, 'change').some((fact) => fact.what === 'date' && fact.to !== undefined);
        return one(stored ? 'wrong' : asked ? 'right' : 'missed', stored ? got : 'asked');
      }
      if (expect['confirmOk'] === true && got === undefined && asked) return one('right');
      return plain();
    }
    case 'ambiguous':
    case 'invalidDate':
    case 'priceAmbiguous':
      return one(asked ? 'right' : 'missed', asked);
    case 'tax':
      return one(got === value ? 'right' : got === 'unknown' ? 'missed' : 'wrong');
    case 'mustNotStore':
      return one(reading.facts.every((fact) => fact.fact === 'question') ? 'right' : 'wrong');
    case 'asks':
      return one(
        got === value || askCodes[String(value)]?.includes(String(got)) === true ? 'right' : got === undefined ? 'missed' : 'wrong',
      );
    case 'madePieces':
      return comparePieces(value as PieceLine[], {
        ...reading,
        facts: of(reading.facts, 'made').flatMap((fact): Fact[] =>
          fact.count === undefined ? [] : [{ fact: 'pieces', piece: fact.piece ?? 'unspecified', count: fact.count, words: '' }],
        ),
      });
    case 'stems':
    case 'stemsByWearer':
      return compareList(
        field,
        value as Json[],
        (mine['lines'] as { ingredient: string; stems?: number; length?: number; unit?: string; wearer?: string }[]).map((line) => ({
          name: line.ingredient,
          qty: line.stems ?? line.length,
          unit: line.unit,
          wearer: line.wearer,
        })),
      );
    case 'items':
      return compareList(
        field,
        value as Json[],
        (mine['packs'] as FactOf<'pack'>[]).map((pack) => ({
          name: pack.item,
          price: Number(pack.price),
          priceMax: number(pack.priceMax),
          per: pack.per,
          packSize: pack.size,
          packUnit: pack.unit,
          qty: pack.quantity,
        })),
      );
    case 'wearers':
      return compareList(
        field,
        value as Json[],
        (mine['wearersList'] as { wearer: string; count: number }[]).map((each) => ({ role: each.wearer, count: each.count })),
      );
    case 'delta':
      return compareList(
        field,
        value as Json[],
        (mine['changes'] as FactOf<'change'>[])
          .filter((fact) => fact.what === 'count' && fact.by !== undefined)
          .map((fact) => ({ type: fact.piece ?? 'unspecified', by: Number(fact.by) })),
      );
    case 'replaces': {
      const said = Object.values(value as Json)[0];
      const wanted = said === 'ex' ? 'on top' : said === 'inc' ? 'included' : said;
      const froms = [
        ...(mine['changes'] as FactOf<'change'>[]).map((fact) => fact.from),
        ...(mine['packs'] as FactOf<'pack'>[]).map((pack) => pack.from),
      ].filter((from) => from !== undefined);
      return one(froms.some((from) => same(from, wanted)) ? 'right' : froms.length === 0 ? 'missed' : 'wrong', froms[0]);
    }
    default:
      return plain();
  }
};

// What stands in every choice is no part of what is asked: the hour beside two days, the currency of a price that may be each or in all.
const inEveryChoice = (reading: Reading, field: 'time' | 'currency' | 'symbol'): unknown => {
  const [ask, other] = reading.asks;
  const values = other === undefined ? (ask?.choices.map((each) => fields(each.facts)[field]) ?? []) : [];
  return values.every((value) => value === values[0]) ? values[0] : undefined;
};

/** Every claim of the line, judged. */
export const judge = (line: CorpusLine, reading: Reading): FieldVerdict[] => {
  const { expect } = line;
  const intents = new Set([...reading.facts, ...choiceFacts(reading)].flatMap((fact) => intentOf[fact.fact]));
  const wanted = [expect['intent'], ...((expect['intentAlso'] as string[] | undefined) ?? [])].map(String);
  const silent = reading.facts.length === 0 && reading.asks.length === 0 && reading.problems.length === 0;
  const intentRight = silent
    ? wanted.includes('chatter')
    : wanted.some((intent) => intents.has(intent)) || (reading.problems.length > 0 && wanted[0] !== 'chatter');
  const intent: FieldVerdict = {
    field: 'intent',
    expected: wanted.join('/'),
    got: [...intents].join('/'),
    verdict: intentRight ? 'right' : silent ? 'missed' : wanted.includes('chatter') || reading.facts.length > 0 ? 'wrong' : 'asked',
  };
  // Where only a date is open, every choice says the same about the rest.
  const [choice] = choiceFacts(reading);
  const said = fields(reading.facts.length === 0 && choice?.fact === 'crew' ? [choice] : reading.facts);
  const shared = (field: 'time' | 'currency' | 'symbol') => ({ [field]: said[field] ?? inEveryChoice(reading, field) });
  const mine = { ...said, ...shared('time'), ...shared('currency'), ...shared('symbol') };
  return [intent, ...Object.entries(expect).flatMap(([field, value]) => compareField(field, value, reading, mine, expect))];
};

const worst: readonly Verdict[] = ['wrong', 'missed', 'asked'];
/** The verdict on the whole line: its worst field. */
export const overall = (verdicts: readonly FieldVerdict[]): Verdict =>
  worst.find((verdict) => verdicts.some((each) => each.verdict === verdict)) ?? 'right';
