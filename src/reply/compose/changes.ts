// What a message changed in what was already there, old → new, so that no correction is silent.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { EventState, OrderLine } from '../../thread/event.ts';
import { totalNow } from '../../thread/total-now.ts';
import { capital } from '../../values/capital.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Line } from '../reply.ts';
import { dateSpan, moneySpan, pieceSpan, strong, text } from '../span.ts';
import { grouped } from '../words/counts.ts';
import { fullDate } from '../words/dates.ts';
import { plural } from '../words/names.ts';
import { materialsWords } from '../words/order.ts';
import { clientTotalChanges, sharedPriceChanges } from './price-before.ts';

/** One line per thing that had a value before and has another now. Empty for a first message. */
export const changeLines = (answer: Answer): readonly Line[] => {
  const { before, event, manner } = answer;
  return [
    ...countChanges(answer),
    ...priceChanges(before, event, manner),
    ...sharedPriceChanges(answer),
    ...clientTotalChanges(answer),
    ...plainChanges(before, event, manner),
  ];
};

const kindsOf = (event: EventState): readonly PieceKind[] => [...new Set(event.lines.map((line) => line.piece))];

const linesOf = (event: EventState, piece: PieceKind): readonly OrderLine[] => event.lines.filter((line) => line.piece === piece);

const countOf = (event: EventState, piece: PieceKind): number => linesOf(event, piece).reduce((total, line) => total + line.count, 0);

/** Kinds that were not there before are named where something was corrected or taken back; a plain order names them itself. */
const kindsGained = ({ how, before, event, stated }: Answer): readonly PieceKind[] => {
  const corrected = stated.some((fact) => fact.fact === 'change' && (fact.what === 'count' || fact.what === 'piece'));
  if (before.lines.length === 0 || (how === 'stated' && !corrected)) return [];
  return kindsOf(event).filter((piece) => !kindsOf(before).includes(piece));
};

const countChanges = (answer: Answer): readonly Line[] => {
  const { before, event, manner } = answer;
  const { says } = manner;
  const renamed = before.lines.length > 0 && kindsOf(before).every((kind) => kind === 'unspecified');
  return (renamed ? [] : [...kindsOf(before), ...kindsGained(answer)]).flatMap((piece) => {
    const [old, now] = [countOf(before, piece), countOf(event, piece)];
    return old === now ? [] : [text`${pieceSpan(capital(plural(piece, says)))}: ${grouped(old)} → ${strong(grouped(now))}`];
  });
};

const priceChanges = (before: EventState, after: EventState, manner: Manner): readonly Line[] => {
  const total = changed(totalOf(after) === undefined ? totalOf(before) : totalNow(before), totalOf(after));
  const totals = total ? [text`Total: ${moneySpan(manner.money(total[0]))} → ${strong(manner.money(total[1]))}`] : [];
  const each = kindsOf(before).flatMap((piece) => {
    const price = changed(priceOf(before, piece), priceOf(after, piece));
    const name = capital(plural(piece, manner.says));
    return price ? [text`${pieceSpan(name)}: ${moneySpan(manner.money(price[0]))} → ${strong(manner.money(price[1]))} each`] : [];
  });
  return [...totals, ...each];
};

const totalOf = (event: EventState): string | undefined => (event.price?.per === 'all' ? event.price.amount : undefined);

const priceOf = (event: EventState, piece: PieceKind): string | undefined => {
  const prices = linesOf(event, piece).map((line) => (line.price?.per === 'each' ? line.price.amount : undefined));
  return prices.length === 1 ? prices[0] : undefined;
};

const plainChanges = (before: EventState, after: EventState, manner: Manner): readonly Line[] => {
  const date = changed(before.date, after.date);
  const material = changed(before.material, after.material);
  const materials = changed(materialsWords(before, manner), materialsWords(after, manner));
  const basis = changed(before.tax.basis, after.tax.basis);
  const title = changed(before.title, after.title);
  return [
    ...(before.cancelled && !after.cancelled ? [text`The event is on again.`] : []),
    ...(date ? [text`Date: ${dateSpan(fullDate(date[0], manner))} → ${strong(fullDate(date[1], manner))}`] : []),
    ...hourChanges(before, after, manner),
    ...(material ? [text`Material: ${material[0]} → ${strong(material[1])}`] : []),
    ...(materials?.[1].includes(' ') ? [text`Material: ${materials[1]}`] : []), // several in one order
    ...(basis ? [text`Tax: ${basisName(basis[0])} → ${strong(basisName(basis[1]))}`] : []),
    ...(title ? [text`Name: ${title[0]} → ${strong(title[1])}`] : []),
  ];
};

/** An hour is shown when it is first said, too: nothing else of the reply tells of it. */
const hourChanges = (before: EventState, after: EventState, manner: Manner): readonly Line[] => {
  const [was, is] = [before.handOver, after.handOver];
  const day = changed(was?.date, is?.date);
  const gone = was?.date && is?.date === undefined ? was.date : undefined;
  const hour = (name: string, old: string | undefined, now: string | undefined): readonly Line[] =>
    now === undefined || old === now || before.date === undefined
      ? []
      : [old === undefined ? text`${name}: ${strong(now)}` : text`${name}: ${old} → ${strong(now)}`];
  return [
    ...hour('Time', before.time, after.time),
    ...(day ? [text`Hand over: ${dateSpan(fullDate(day[0], manner))} → ${strong(fullDate(day[1], manner))}`] : []),
    ...(gone ? [text`Hand over: ${dateSpan(fullDate(gone, manner))} is after the event now and no longer holds.`] : []),
    ...hour('Hand over at', was?.time, is?.time),
  ];
};

const basisName = (basis: string): string => (basis === 'none' ? 'none' : basis);

/** Both values, when there was one before, there is one now, and they differ. */
const changed = <T>(old: T | undefined, now: T | undefined): readonly [T, T] | undefined =>
  old !== undefined && now !== undefined && old !== now ? [old, now] : undefined;
