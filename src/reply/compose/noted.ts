// What else a message stated, said back in a line each: title, recipe, crew, steps, rules.

import type { Fact, FactOf } from '../../reading/fact.ts';
import { changes, kindsChanged, recipeOf } from '../../thread/apply-recipe.ts';
import { decimal } from '../../values/decimal.ts';
import { printNumber } from '../../values/money.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Line } from '../reply.ts';
import { dateSpan, joined, moneySpan, ownWords, strong, text } from '../span.ts';
import { paceWords, shortDate } from '../words/dates.ts';
import { pieceName } from '../words/names.ts';
import { lineWords, recipeWords } from '../words/recipes.ts';
import { isBuyingMark, markedLine } from './ordered.ts';

/** A price below already says which rules hold for this event and what they replace. */
export const notedLines = (answer: Answer): readonly Line[] =>
  answer.stated
    .filter((fact) => fact.fact !== 'rule' || fact.what === 'spare' || !answer.price?.ok)
    .filter((fact) => fact.fact !== 'pack' || answer.listRead === undefined)
    .flatMap((fact) => {
      if (fact.fact === 'step' && isBuyingMark(fact)) return [markedLine(fact, answer)];
      if (fact.fact === 'price') return toldLine(fact, answer);
      return fact.fact === 'recipe' ? [saidRecipe(fact, answer), ...nowIn(fact, answer)] : notedLine(fact, answer.manner);
    });

/** A price of a kind that is not in the order: it waits. One kind alone is priced below, for one piece. */
const toldLine = ({ piece, amount }: FactOf<'price'>, { event, manner }: Answer): readonly Line[] =>
  piece && event.told?.[piece] && (event.lines.length > 0 || Object.keys(event.told).length > 1)
    ? [text`Noted: ${strong(manner.money(amount))} for a ${pieceName(piece, manner.says)}, once any are ordered.`]
    : [];

const saidRecipe = (fact: FactOf<'recipe'>, { event, manner, prices }: Answer): Line => {
  const kinds = [...new Set(event.lines.map((line) => line.piece))];
  const kind = fact.piece ?? (kinds.length === 1 ? kinds[0] : undefined);
  const listed = prices().items.map((item) => item.name);
  return recipeWords(kind === undefined ? fact : { ...fact, piece: kind }, manner.says, listed);
};

/** What is in it now, where a change left some of it as it was. */
const nowIn = (fact: FactOf<'recipe'>, { event, manner, prices }: Answer): readonly Line[] => {
  if (!changes(fact) || fact.name !== undefined) return [];
  const listed = prices().items.map((item) => item.name);
  return kindsChanged(event, fact).flatMap((kind) => {
    const lines = recipeOf(event, kind);
    if (lines.length <= fact.lines.length) return [];
    const words = joined(
      lines.map((line) => lineWords(line, listed)),
      ', ',
    );
    return [text`In each ${pieceName(kind === 'any' ? 'unspecified' : kind, manner.says)} now: ${words}.`];
  });
};

const spareScope = ', where the price list has no spare of its own';
const notedLine = (fact: Fact, manner: Manner): readonly Line[] => {
  switch (fact.fact) {
    case 'title':
      return [text`This event is ${strong(ownWords(fact.title).text)}.`];
    case 'pack':
      return fact.spare === undefined ? [] : [text`Spare on ${ownWords(fact.item)}: ${strong(`${fact.spare} %`)} from now on.`];
    case 'crew':
      return [crewLine(fact, manner)];
    case 'rule':
      if (fact.what === 'spare')
        return [
          text`For this event only: ${strong(`${fact.to} %`)} spare on ${fact.item ? ownWords(fact.item) : 'stems'}${fact.item ? '' : spareScope}.`,
        ];
      return [
        text`For this event only: ${fact.what} ${strong(fact.what === 'labour share' ? `${fact.to} %` : fact.to)}${fact.piece ? ` (${pieceName(fact.piece, manner.says)})` : ''}.`,
      ];
    case 'step':
      if (fact.step === 'cancelled') return [text`This event is off: nothing of it is on the bench any more.`];
      return [text`Noted: ${fact.item ? ownWords(fact.item) : 'all'} ${fact.step}.`];
    case 'drying':
      return [
        text`From now on ${strong(ownWords(fact.item).text)} dries ${fact.daysMax ? `${fact.days} to ${fact.daysMax}` : fact.days} days here.`,
      ];
    default:
      return [];
  }
};

// "one crown takes 45 mins, 2 girls working"
const atBench = ({ people, minutesPerPiece }: FactOf<'crew'>): string =>
  people === undefined || minutesPerPiece === undefined ? '' : `, ${people} at the bench`;

const crewLine = (fact: FactOf<'crew'>, manner: Manner): Line => {
  const pace = fact.minutesPerPiece ?? (fact.piecesPerHour ? 60 / fact.piecesPerHour : undefined);
  const when = fact.date ? text` on ${dateSpan(shortDate(fact.date as Parameters<typeof shortDate>[0], manner))}` : [];
  const wage = fact.wage ? text`, ${moneySpan(manner.money(fact.wage))} an hour` : [];
  if (fact.away) return text`Noted: ${fact.people ?? 1} away${when}.`;
  if (fact.people === 0) return text`Nobody at the bench${when}.`;
  const hours =
    fact.hours !== undefined
      ? ` for ${printNumber(decimal(fact.hours))} h${fact.people === 1 ? '' : ' each'}`
      : fact.totalHours !== undefined
        ? `, ${printNumber(decimal(fact.totalHours))} h in all`
        : '';
  if (pace !== undefined) {
    const each = text`Bench time: ${strong(paceWords(pace))} a ${pieceName(fact.piece ?? 'buttonhole', manner.says)} from now on`;
    // "3 of us fri, 4 hrs each, 15 bouts an hour"
    return hours !== '' && fact.people !== undefined
      ? text`${each}. At the bench${when}: ${strong(String(fact.people))}${hours}${wage}.`
      : text`${each}${atBench(fact)}.`;
  }
  if (fact.wage && fact.people === undefined && fact.hours === undefined)
    return text`Wage${when}: ${strong(manner.money(fact.wage))} an hour.`;
  return text`At the bench${when}: ${strong(String(fact.people ?? ''))}${hours}${wage}.`;
};
