// What an answer rests on that nobody said or set, by name.

import type { PricedOrder } from '../../pricing/price-order.ts';
import type { Answer } from '../answer.ts';

/** The figures nobody said or set. A tax whose rate is not known at all is told of elsewhere. */
export const assumedIn = ({ terms }: PricedOrder): readonly string[] => {
  const { labour, multiples, tax } = terms;
  return [
    ...(labour.share.origin === 'assumed' ? ['labour share'] : []),
    ...(multiples.stems.origin === 'assumed' || multiples.sundries.origin === 'assumed' ? ['multiple'] : []),
    ...(tax.rate.origin === 'assumed' && !tax.rateUnset && tax.basis.value !== 'none' ? ['tax rate of your region'] : []),
  ];
};

/** The same of the whole event: its price and its plan. */
export const allAssumed = (answer: Answer): readonly string[] => {
  const priced = answer.price?.ok ? answer.price.value.priced : undefined;
  const plan = answer.plan();
  return [
    ...(priced ? assumedIn(priced) : []),
    ...(priced?.terms.tax.basis.origin === 'assumed' ? [`prices ${quotedWords[priced.terms.tax.basis.value]}`] : []),
    ...(plan?.event.lines.some((line) => line.materialAssumed) ? ['room for fresh work, as nobody said what they are made of'] : []),
    ...(plan?.event.lines.some((line) => line.minutesBy === 'the handbook') ? ['the usual bench minutes'] : []),
  ];
};

const quotedWords = { included: 'with the tax in', 'on top': 'before tax', none: 'without tax' } as const;
