// What else a message stated, said back in a line each: title, recipe, price-list line, crew, wearers, steps, rules, what it really cost.

import type { Fact, FactOf } from '../../reading/fact.ts';
import { decimal } from '../../values/decimal.ts';
import { printNumber } from '../../values/money.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Line } from '../reply.ts';
import { dateSpan, joined, moneySpan, ownWords, strong, text } from '../span.ts';
import { duration, shortDate } from '../words/dates.ts';
import { pieceName, plural } from '../words/names.ts';

/** A price below already says which rules hold for this event and what they replace. */
export const notedLines = (answer: Answer): readonly Line[] =>
  answer.stated.filter((fact) => fact.fact !== 'rule' || !answer.price?.ok).flatMap((fact) => notedLine(fact, answer.manner));

const notedLine = (fact: Fact, manner: Manner): readonly Line[] => {
  switch (fact.fact) {
    case 'title':
      return [text`This event is ${strong(ownWords(fact.title).text)}.`];
    case 'recipe':
      return [recipeLine(fact, manner)];
    case 'pack':
      return [packLine(fact, manner)];
    case 'crew':
      return [crewLine(fact, manner)];
    case 'wearers':
      return [
        text`Wearers: ${joined(
          fact.wearers.map((one) => text`${one.count} ${ownWords(one.wearer)}`),
          ', ',
        )}.`,
      ];
    case 'rule':
      return [text`For this event only: ${fact.what} ${strong(fact.to)}${fact.piece ? ` (${pieceName(fact.piece, manner.says)})` : ''}.`];
    case 'step':
      return [text`Noted: ${fact.item ? ownWords(fact.item) : 'all'} ${fact.step}.`];
    case 'drying':
      return [
        text`From now on ${strong(ownWords(fact.item).text)} dries ${fact.daysMax ? `${fact.days} to ${fact.daysMax}` : fact.days} days here.`,
      ];
    case 'actual':
      return [actualLine(fact, manner)];
    default:
      return [];
  }
};

const recipeLine = (fact: FactOf<'recipe'>, manner: Manner): Line => {
  const parts = fact.lines.map((line) => {
    const amount = line.stems !== undefined ? `${line.stems} ` : line.length !== undefined ? `${line.length} ${line.unit ?? ''} ` : '';
    return text`${amount}${ownWords(line.ingredient)}${line.wearer ? text` (${ownWords(line.wearer)})` : []}`;
  });
  const each =
    fact.pieces && fact.pieces !== 1
      ? `${fact.pieces} ${plural(fact.piece ?? 'unspecified', manner.says)}`
      : `each ${pieceName(fact.piece ?? 'unspecified', manner.says)}`;
  return text`Recipe for ${each}: ${joined(parts, ', ')}.`;
};

const packLine = (fact: FactOf<'pack'>, manner: Manner): Line => {
  const price = moneySpan(manner.money(fact.price));
  const pack = fact.size ? ` for ${fact.size}${fact.unit ? ` ${fact.unit}` : ''}` : fact.per ? ` a ${fact.per}` : '';
  const each = fact.size && fact.size > 1 ? text`, ${moneySpan(manner.money(decimal(fact.price).dividedBy(fact.size)))} each` : [];
  const old = fact.from ? text` (was ${moneySpan(manner.money(fact.from))})` : [];
  return text`Price list: ${strong(ownWords(fact.item).text)} ${price}${pack}${each}${old}.`;
};

const crewLine = (fact: FactOf<'crew'>, manner: Manner): Line => {
  const pace = fact.minutesPerPiece ?? (fact.piecesPerHour ? 60 / fact.piecesPerHour : undefined);
  const when = fact.date ? text` on ${dateSpan(shortDate(fact.date as Parameters<typeof shortDate>[0], manner))}` : [];
  const wage = fact.wage ? text`, ${moneySpan(manner.money(fact.wage))} an hour` : [];
  if (fact.away) return text`Noted: ${fact.people ?? 1} away${when}.`;
  if (pace !== undefined)
    return text`Bench time: ${strong(duration(pace))} a ${pieceName(fact.piece ?? 'buttonhole', manner.says)} from now on.`;
  const hours = fact.hours !== undefined ? ` for ${printNumber(decimal(fact.hours))} h each` : '';
  return text`At the bench${when}: ${strong(String(fact.people ?? ''))}${hours}${wage}.`;
};

const actualLine = (fact: FactOf<'actual'>, manner: Manner): Line => {
  if (fact.what === 'spent') return text`Noted: ${moneySpan(manner.money(fact.amount ?? '0'))} spent.`;
  if (fact.what === 'minutes') return text`Noted: ${duration(fact.minutes ?? 0)}${fact.count ? ` for ${fact.count}` : ''}.`;
  return text`Noted: ${fact.count ?? 0} ${fact.item ? ownWords(fact.item) : 'stems'} unused.`;
};
