// The buying list as scripts read it: plain JSON, every decimal as text.

import type { BuyingList } from './buying-list.ts';
import { shownDown, shownUp } from './shown-quantity.ts';

/** Quantities in `unit`; `spend` in the studio's currency with its usual decimals. */
export interface BuyFigure {
  readonly item: string;
  readonly need: string;
  readonly packs: number;
  readonly packSize: string;
  readonly unit: string;
  readonly spend: string;
  readonly left: string;
  readonly supplier?: string;
  readonly orderBy?: string;
  readonly status: string;
}

export const buyingFigures = (list: BuyingList, coinDigits: number): readonly BuyFigure[] =>
  list.rows.map((row) => ({
    item: row.item.name,
    need: shownUp(row.need),
    packs: row.packs,
    packSize: row.item.size.toFixed(),
    unit: row.item.unit.name,
    spend: row.spend.toFixed(Math.max(coinDigits, row.spend.decimalPlaces())),
    left: shownDown(row.left),
    ...(row.item.supplier === undefined ? {} : { supplier: row.item.supplier }),
    ...(row.orderBy === undefined ? {} : { orderBy: row.orderBy }),
    status: row.status,
  }));
