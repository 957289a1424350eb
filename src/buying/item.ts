// One row of a studio's price list: what a pack costs, what is in it, and what buying it needs to know.

import { type Role, soundsLikeSundry } from '../handbook/roles.ts';
import { inMetres, type Unit } from '../handbook/units.ts';
import { type Decimal, zero } from '../values/decimal.ts';

export interface Item {
  readonly name: string;
  readonly packPrice: Decimal; // studio currency, before tax; 0 for foraged or homegrown
  readonly size: Decimal; // of `unit` in a pack; above zero
  readonly unit: Unit;
  readonly pack?: string; // bunch, box, spool…
  readonly supplier?: string;
  readonly leadDays?: number; // working days from order to delivery
  readonly spare?: Decimal; // percent bought beyond what goes in; left out = the studio's usual
  readonly stock?: Decimal; // in hand, of `unit`
  readonly dryingDays?: number;
  readonly role?: Role;
  readonly note?: string;
}

/** Pin, tape, wire, ribbon, card and packaging. What the list doesn't say is told by the name; whatever is sold by length is a sundry. */
export const isSundry = (item: Item): boolean =>
  item.role !== undefined ? item.role === 'sundry' : item.unit.measure === 'length' || soundsLikeSundry(item.name);

/** Metres in one pack; undefined when it is not sold by length. */
export const packMetres = (item: Item): Decimal | undefined =>
  item.unit.measure === 'length' ? inMetres(item.size, item.unit.name) : undefined;

export const stockOf = (item: Item): Decimal => item.stock ?? zero;
