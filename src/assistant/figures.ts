// The figures of an event for scripts: a key is absent where nothing is known yet.

import { type BenchFigures, benchFigures, type CalendarFigure, calendarFigures } from '../planning/bench-figures.ts';
import { type PriceFigures, priceFigures } from '../pricing/price-figures.ts';
import type { Considered } from './consider.ts';

export interface Figures {
  readonly price?: PriceFigures;
  readonly bench?: BenchFigures;
  readonly calendar?: readonly CalendarFigure[];
}

export const figuresOf = (event: Considered, key: string): Figures => {
  const bench = event.plan() ? benchFigures(event.bench(), key) : undefined;
  const calendar = bench ? calendarFigures(event.bench(), key) : undefined;
  return {
    ...(event.price?.ok && !event.price.value.onePiece ? { price: priceFigures(event.price.value.priced) } : {}),
    ...(bench ? { bench } : {}),
    ...(calendar ? { calendar } : {}),
  };
};
