// One fact in a few words, for "why?": what was understood, not how.

import type { Fact } from '../../reading/fact.ts';
import { parseDay } from '../../values/day.ts';
import type { Manner } from '../answer.ts';
import type { Line } from '../reply.ts';
import { text } from '../span.ts';
import { duration, fullDate, paceWords } from './dates.ts';
import { counted, pieceName, plural } from './names.ts';

export const factWords = (fact: Fact, manner: Manner): Line => {
  switch (fact.fact) {
    case 'pieces':
      return text`${counted(fact.count, fact.piece, manner.says)}${fact.adds ? ' more' : ''}${fact.price ? `, ${manner.money(fact.price.amount)} ${fact.price.per}` : ''}`;
    case 'price':
      return text`price ${manner.money(fact.amount)} ${fact.per === 'each' ? 'each' : 'in all'}`;
    case 'tax':
      return text`tax ${fact.basis ?? ''}${fact.rate ? ` ${fact.rate} %` : ''}`;
    case 'material':
      return text`${fact.material}`;
    case 'date': {
      const day = parseDay(fact.date);
      return text`${fact.of ?? 'event'} ${day ? fullDate(day, manner) : fact.date}${fact.time ? ` ${fact.time}` : ''}${fact.yearAssumed ? ' (year assumed)' : ''}${fact.orderAssumed ? ' (day first assumed)' : ''}`;
    }
    case 'made': {
      const verb = fact.remade ? 'remade' : 'made';
      const kinds = fact.piece ? ` the ${plural(fact.piece, manner.says)}` : '';
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
        return text`${some} ${fact.to ?? ''}${fact.rest ? `, the rest ${fact.rest}` : ''}`;
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
      return text`bench: ${fact.people ?? ''} people${fact.hours ? `, ${fact.hours} h each` : ''}${fact.date ? `, ${fact.date}` : ''}`;
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
