// One fact in a few words, for "why?": what was understood, not how.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Fact, FactOf } from '../../reading/fact.ts';
import { parseDay } from '../../values/day.ts';
import type { Manner } from '../answer.ts';
import type { Line } from '../reply.ts';
import { text } from '../span.ts';
import { duration, fullDate, paceWords } from './dates.ts';
import { counted, pieceName, plural } from './names.ts';
import { priceSaid } from './price-said.ts';

const piecesSaid = ({ count, countMax, approx, piece, adds, price, material, wearer }: FactOf<'pieces'>, manner: Manner): Line => {
  const many = countMax === undefined ? counted(count, piece, manner.says) : `${count} to ${counted(countMax, piece, manner.says)}`;
  const cost = price === undefined ? '' : `, ${priceSaid(price, manner)} ${price.per === 'line' ? 'for all of them' : 'each'}`;
  const whose = wearer === undefined ? '' : ` for ${wearer}`;
  return text`${approx ? 'about ' : ''}${many}${adds ? ' more' : ''}${whose}${material === undefined ? '' : `, ${material}`}${cost}`;
};

const crewSaid = (
  { people, hours, totalHours, wage, piecesPerHour, piece, date, away, ...money }: FactOf<'crew'>,
  manner: Manner,
): Line => {
  const day = date === undefined ? undefined : parseDay(date);
  const parts = [
    ...(people === undefined ? [] : [`${people === 1 ? '1 person' : `${people} people`}${away ? ' away' : ''}`]),
    ...(hours === undefined ? [] : [`${hours} h each`]),
    ...(hours === undefined && totalHours !== undefined ? [`${totalHours} h in all`] : []),
    ...(wage === undefined ? [] : [`${priceSaid({ amount: wage, ...money }, manner)} an hour`]),
    ...(piecesPerHour === undefined ? [] : [`${counted(piecesPerHour, piece ?? 'unspecified', manner.says)} an hour`]),
    ...(day === undefined ? [] : [fullDate(day, manner)]),
  ];
  return text`bench: ${parts.join(', ')}`;
};

const becomes = ({ what, to, some }: FactOf<'change'>, { says }: Manner): string => {
  if (what !== 'piece') return String(to ?? '');
  return `as ${some === 1 ? pieceName(to as PieceKind, says) : plural(to as PieceKind, says)}`;
};

export const factWords = (fact: Fact, manner: Manner): Line => {
  switch (fact.fact) {
    case 'pieces':
      return piecesSaid(fact, manner);
    case 'price':
      return text`price ${priceSaid(fact, manner)} ${fact.per === 'each' ? 'each' : 'in all'}${fact.piece ? ` for ${plural(fact.piece, manner.says)}` : ''}${fact.coversOther ? ', other flowers too' : ''}`;
    case 'tax':
      return text`${fact.name ?? 'tax'} ${fact.basis ?? ''}${fact.rate ? ` ${fact.rate} %` : ''}`;
    case 'material':
      return text`${fact.material}${fact.piece ? ` (${plural(fact.piece, manner.says)})` : ''}`;
    case 'date': {
      const day = parseDay(fact.date);
      return text`${fact.of ?? 'event'} ${day ? fullDate(day, manner) : fact.date}${fact.time ? ` ${fact.time}` : ''}${fact.yearAssumed ? ' (year assumed)' : ''}${fact.orderAssumed ? ' (day first assumed)' : ''}`;
    }
    case 'made': {
      const verb = fact.remade ? 'remade' : 'made';
      const kinds = fact.piece ? ` the ${plural(fact.piece, manner.says)}` : '';
      if (fact.count !== undefined && fact.stage !== undefined)
        return text`${fact.piece ? counted(fact.count, fact.piece, manner.says) : fact.count} ${fact.stage}, not finished`;
      if (fact.count !== undefined) return text`${verb} ${fact.piece ? counted(fact.count, fact.piece, manner.says) : fact.count}`;
      if (fact.fraction !== undefined) return text`${verb} ${Math.round(Number(fact.fraction) * 100)} % of${kinds || ' the order'}`;
      return text`${verb} all${kinds}`;
    }
    case 'broke':
    case 'left':
      return text`${fact.piece ? counted(fact.count, fact.piece, manner.says) : fact.count} ${fact.fact}`;
    case 'change':
      if (fact.some !== undefined) {
        const some = typeof fact.some === 'number' && fact.piece ? counted(fact.some, fact.piece, manner.says) : `${fact.some} of them`;
        return text`${some} ${becomes(fact, manner)}${fact.rest ? `, the rest ${fact.rest}` : ''}`;
      }
      return text`change ${fact.what}${fact.to === undefined ? ` by ${fact.by ?? ''}` : ` to ${fact.to}`}`;
    case 'pack':
      if (fact.per === 'stem' && fact.size)
        return text`price list: ${fact.item} ${manner.money(fact.price)} a stem, ${fact.size} to a pack`;
      return text`price list: ${fact.item} ${manner.money(fact.price)}${fact.size ? ` for ${fact.size}${fact.unit ? ` ${fact.unit}` : ''}` : fact.per ? ` a ${fact.per}` : ''}`;
    case 'packed':
      return text`${fact.item}: ${fact.size}${fact.unit ? ` ${fact.unit}` : ''} to a ${fact.per ?? 'pack'}`;
    case 'recipe':
      return text`recipe: ${fact.lines.map((line) => `${line.stems ?? line.length ?? ''} ${line.unit ?? ''}${line.ingredient}`.trim()).join(', ')}`;
    case 'crew':
      if (fact.minutesPerPiece !== undefined)
        return text`bench: ${paceWords(fact.minutesPerPiece)} a ${pieceName(fact.piece ?? 'buttonhole', manner.says)}`;
      return crewSaid(fact, manner);
    case 'wearers':
      return text`wearers: ${fact.wearers.map((one) => `${one.approx ? 'about ' : ''}${one.count} ${one.wearer}`).join(', ')}`;
    case 'actual':
      if (fact.what === 'spent') return text`really spent ${manner.money(fact.amount ?? '0')}${fact.item ? ` (${fact.item})` : ''}`;
      if (fact.what === 'minutes') return text`really took ${duration(fact.minutes ?? 0)}${fact.count ? ` for ${fact.count}` : ''}`;
      return text`not used: ${fact.count ?? 0}${fact.item ? ` ${fact.item}` : ''}`;
    case 'rule':
      return text`this event: ${fact.what}${fact.item ? ` of ${fact.item}` : ''} ${fact.to}${fact.what === 'spare' ? ' %' : ''}`;
    case 'title':
      return text`name: ${fact.title}`;
    default:
      return text`${fact.fact}`;
  }
};
