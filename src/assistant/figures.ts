// The figures of an event for scripts: a key is absent where nothing is known yet.

import { type BuyFigure, buyingFigures } from '../buying/buying-figures.ts';
import type { CautionId } from '../handbook/caution-row.ts';
import { type BenchFigures, benchFigures, type CalendarFigure, calendarFigures } from '../planning/bench-figures.ts';
import { benchRules, minutesEach } from '../planning/bench-rules.ts';
import { minutesPaid } from '../pricing/labour-check.ts';
import { type PriceFigures, priceFigures } from '../pricing/price-figures.ts';
import { cautionsOf, tellsWage } from '../reply/compose/cautions.ts';
import { minorUnits } from '../values/currency.ts';
import type { Considered } from './consider.ts';

export interface Figures {
  readonly price?: PriceFigures;
  /** Without a date only the minutes: what is planned for the order and what its labour money pays for. */
  readonly bench?: Partial<BenchFigures> & { readonly minutesPlanned: number; readonly minutesPaid?: number };
  readonly calendar?: readonly CalendarFigure[];
  readonly buy?: readonly BuyFigure[]; // once there is a recipe
  readonly cautions?: readonly CautionId[]; // those the work calls for, by what was said
}

export const figuresOf = (event: Considered, key: string): Figures => {
  const priced = event.price?.ok && !event.price.value.onePiece ? event.price.value.priced : undefined;
  const planned = event.plan() ? benchFigures(event.bench(), key) : undefined;
  const calendar = planned ? calendarFigures(event.bench(), key) : undefined;
  const wage = priced?.terms.wage;
  const paid = priced && wage ? { minutesPaid: minutesPaid(priced.all.exact.labour, wage.cost).floor().toNumber() } : {};
  const wageTold = event.standing().some(({ facts }) => facts.some(tellsWage));
  const cautions = cautionsOf(event, wageTold).map(({ id }) => id);
  return {
    ...(priced ? { price: priceFigures(priced) } : {}),
    ...(event.event.lines.length > 0 ? { bench: { minutesPlanned: minutesPlanned(event), ...planned, ...paid } } : {}),
    ...(calendar ? { calendar } : {}),
    ...(Object.keys(event.event.recipes).length > 0
      ? { buy: buyingFigures(event.buying.own(), minorUnits(event.studio.settings.currency) ?? 2) }
      : {}),
    ...(cautions.length > 0 ? { cautions } : {}),
  };
};

const minutesPlanned = ({ event, studio }: Considered): number => {
  const rules = benchRules(studio);
  return event.lines.reduce((total, line) => total + line.count * minutesEach(line.piece, rules, event.rules).minutes, 0);
};
