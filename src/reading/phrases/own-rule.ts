// A rule for this event or this studio: "this one at 3.5 and 25% labour", "we dry statice 10 days".

import type { PieceKind } from '../../handbook/pieces.ts';
import type { FactOf } from '../fact.ts';
import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import { isRangeOrChoice } from '../text/token.ts';

const lead = pattern(
  '(this one|this event|this job|for this|on this|here|this|it|them|these) (one|event|job)? (is|goes|at|on|runs|with|,|:|to|be)? (at|on|with)?',
);
const rule = (what: FactOf<'rule'>['what'], to: string | undefined, piece?: PieceKind): Unworded | undefined =>
  to === undefined ? undefined : { fact: 'rule', what, to, ...(piece === undefined ? {} : { piece }) };
const amount = (match: Match): string | undefined => match.kept['n']?.number?.amount;

const forms: readonly (readonly [ReturnType<typeof pattern>, (match: Match) => Unworded | undefined])[] = [
  [pattern('(<n:percent>) (for|on)? (labour|labor)'), (match) => rule('labour share', amount(match))],
  [
    pattern('(labour|labor) (share|rate|percent)? (at|is|of|to|=|:|on|up to|down to)? (this one)? (<n:percent>)'),
    (match) => rule('labour share', amount(match)),
  ],
  [
    pattern('(labour|labor) (<n:percent>)? (comes|is|taken|goes)? (out of|off|from|of) the price'),
    () => rule('labour rule', 'out of the price'),
  ],
  [pattern('(labour|labor) on (the)? product'), () => rule('labour rule', 'on product')],
  [
    pattern('(stems|stem) (at|x|times|by|multiple|markup) (of|is|at|to|x)? <n:plain> (x|times)?'),
    (match) => (small(match) ? rule('stems multiple', amount(match)) : undefined),
  ],
  [
    pattern('(sundries|sundry|hard goods) (at|x|times|by|multiple) (of|is|at|to|x)? <n:plain> (x|times)?'),
    (match) => (small(match) ? rule('sundries multiple', amount(match)) : undefined),
  ],
  [
    pattern('(sundries|sundry) (are|is|cost|costs|at|=|:) (about)? <n:money> (each|a piece|per piece)?'),
    (match) => rule('sundries', amount(match)),
  ],
  [
    pattern('(sundries|sundry) (are|is|cost|costs|at|=|:)? (about)? <n:amount> (each|a piece|per piece|apiece|ea)'),
    (match) => rule('sundries', amount(match)),
  ],
  [
    pattern('(minimum|min) (price|charge) (is|of|at|to|=|:)? <n:amount> (each|a piece|per piece|apiece|ea)?'),
    (match) => rule('minimum price', amount(match)),
  ],
  [
    pattern('<n:plain> (x|times) (on|for) (the|our)? (stems|stem|flowers)'),
    (match) => (small(match) ? rule('stems multiple', amount(match)) : undefined),
  ],
  [
    pattern('x <n:plain> (on|for) (the|our)? (stems|stem|flowers)'),
    (match) => (small(match) ? rule('stems multiple', amount(match)) : undefined),
  ],
  [pattern('(stems|stem) <n:plain> (x|times)'), (match) => (small(match) ? rule('stems multiple', amount(match)) : undefined)],
  [
    pattern('<n:plain> (x|times) (on|for) (the|our)? (sundries|sundry|hard goods|ribbon)'),
    (match) => (small(match) ? rule('sundries multiple', amount(match)) : undefined),
  ],
  [
    pattern('(sundries|sundry|hard goods) <n:plain> (x|times)'),
    (match) => (small(match) ? rule('sundries multiple', amount(match)) : undefined),
  ],
  [
    pattern('(multiple|markup|mark up|mark-up|multiplier) (of|is|at|to|=|:|x|now|on this|for this|here)? (x)? <n:plain> (x|times)?'),
    (match) => (small(match) ? rule('multiple', amount(match)) : undefined),
  ],
  [
    pattern('<n:plain> (times|x) (markup|multiple|mark up|wholesale)'),
    (match) => (small(match) ? rule('multiple', amount(match)) : undefined),
  ],
  [pattern('(tax|vat|gst|hst) (rate|at|is|rate is|of) (is|at|to|now)? <n:percent>'), (match) => rule('tax rate', amount(match))],
  [pattern('round (up)? (to|the price to) (the)? (next|nearest)? <n:amount>'), (match) => rule('price step', amount(match))],
];
// "Minimum 30" with nothing else is a price not to go below; "minimum 30 buttonholes" or "minimum order 30" is not.
const floor = pattern('(our|my|the)? minimum (is|of|at|to|=|:)? <n:amount> (each|a piece|per piece|apiece|ea)?');
// "Tax 8.25%" alone sets the rate; behind "inc" or "plus" it says more, and is read with that.
const bareRate = pattern('(sales)? (tax|vat|gst|hst) (:|=)? <n:percent>');
const wholePart: readonly (readonly [ReturnType<typeof pattern>, FactOf<'rule'>['what']])[] = [
  [floor, 'minimum price'],
  [bareRate, 'tax rate'],
];
const small = (match: Match): boolean =>
  !/[.]\d{2}$/.test(match.kept['n']?.text ?? '') && Number(amount(match)) >= 0 && Number(amount(match)) <= 10;
const shareOf = pattern('((comes|is|taken)? (out of|off|from|of) (the)? price|on (the|our)? (product|goods|materials|stems))');
const leadMultiple = pattern('at <n:plain>');
const dryForms = [
  pattern('(we|i) (dry|hang|press) (the|our)? <i:ingredient> (for|about|in)? <d:duration>'),
  pattern('<i:ingredient> (takes|needs|dries in|drying time is|hangs for|takes about) (us)? <d:duration> (to dry|drying|hanging)?'),
];

// "plus tax at 8.875%", "ex VAT at 13.5%": of this price, and read with it.
const ofPrice = ({ tokens }: Reader, match: Match, fact: Unworded): boolean => {
  const before = tokens[match.start - (tokens[match.start - 1]?.text === 'the' ? 2 : 1)];
  const behind =
    before?.means['included'] !== undefined ||
    before?.means['onTop'] !== undefined ||
    /^(\+|and|add|with|w|then|pre)$/.test(before?.text ?? '');
  const after = tokens[match.end];
  const told =
    after?.means['included'] !== undefined || after?.means['onTop'] !== undefined || /^(on|on top|added)$/.test(after?.text ?? '');
  return fact.fact === 'rule' && fact.what === 'tax rate' && (behind || told);
};

const find = (reader: Reader): Finding[] => {
  const findings: Finding[] = [];
  for (const part of reader.untouched().slice(0, 20)) {
    const priced = reader.tokens
      .slice(part.start, part.end)
      .some((token) => token.means['piece'] !== undefined && token.means['piece'] !== 'unspecified');
    for (const form of dryForms) {
      const match = form.in(reader.tokens, part.start, part.end);
      const days = match?.kept['d']?.number;
      const unit = days?.unit === 'week' ? 7 : days?.unit === 'day' ? 1 : 0;
      if (match === undefined || days === undefined || unit === 0 || findings.some((finding) => finding.start === match.start)) continue;
      const most = days.max ?? days.or?.at(-1);
      const max = most === undefined ? {} : { daysMax: Number(most) * unit };
      findings.push(
        found(reader, match.start, match.end, [
          { fact: 'drying', item: match.kept['i']?.means['ingredient'] ?? '', days: Number(days.amount) * unit, ...max },
        ]),
      );
    }
    const found_: { match: Match; fact: Unworded }[] = [];
    for (const [form, build] of forms) {
      const match = form.in(reader.tokens, part.start, part.end);
      const fact = match === undefined ? undefined : build(match);
      // "labour 30% out of the price": the share, and what it is a share of.
      const base =
        match !== undefined && fact?.fact === 'rule' && fact.what === 'labour share'
          ? shareOf.at(reader.tokens, match.end, part.end)
          : undefined;
      if (
        match !== undefined &&
        fact !== undefined &&
        !ofPrice(reader, match, fact) &&
        !found_.some((other) => other.match.start < match.end && match.start < other.match.end)
      )
        found_.push({ match, fact });
      if (base !== undefined) {
        const price = reader.tokens.slice(base.start, base.end).some((token) => token.text === 'price');
        found_.push({ match: base, fact: { fact: 'rule', what: 'labour rule', to: price ? 'out of the price' : 'on product' } });
      }
    }
    for (const [form, what] of wholePart) {
      const match = form.at(reader.tokens, part.start, part.end);
      const fact = match?.end === part.end ? rule(what, amount(match)) : undefined;
      if (match !== undefined && fact !== undefined && found_.length === 0) found_.push({ match, fact });
    }
    const begun = lead.at(reader.tokens, part.start, part.end);
    const multiple = leadMultiple.in(reader.tokens, part.start, part.end);
    const next = reader.tokens[multiple?.end ?? 0];
    if (
      begun !== undefined &&
      multiple !== undefined &&
      small(multiple) &&
      !priced &&
      next?.means['each'] === undefined &&
      (next === undefined || next.text === 'and' || next.text === 'x' || next.text === 'times' || next.text === ',')
    ) {
      const fact = rule('multiple', amount(multiple));
      if (fact !== undefined && (found_.length > 0 || next === undefined || next.text === 'x' || next.text === 'times'))
        found_.push({ match: multiple, fact });
    }
    // "labour 20 or 25%": which of them is not said.
    for (const { match, fact } of found_) {
      const said = match.kept['n']?.number;
      const { start, end } = match;
      findings.push(!isRangeOrChoice(said) ? found(reader, start, end, [fact]) : { start, end, held: true });
    }
  }
  return findings;
};

export const ownRule: Phrase = { name: 'own rule', examples: ['this one at 3.5 and 25% labour', 'we dry statice 10 days'], find };
