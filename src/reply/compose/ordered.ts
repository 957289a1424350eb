// "Ordered the statice", "ribbon's in": the mark said back, and what is still open on the buying list.

import type { BuyRow } from '../../buying/buying-list.ts';
import { matchIngredient } from '../../handbook/ingredient-names.ts';
import type { FactOf } from '../../reading/fact.ts';
import { capital } from '../../values/capital.ts';
import { sum } from '../../values/decimal.ts';
import type { Answer } from '../answer.ts';
import type { Line } from '../reply.ts';
import { dateSpan, moneySpan, ownWords, strong, text } from '../span.ts';
import { shortDate } from '../words/dates.ts';

type Step = FactOf<'step'>;

export const isBuyingMark = ({ step }: Step): boolean => step === 'ordered' || step === 'received';

export const markedLine = ({ step, item }: Step, answer: Answer): Line => {
  const { rows } = answer.buying.own();
  const name = item === undefined ? 'Everything' : capital(ownWords(item).text);
  const said = text`${strong(name)}: ${step}.`;
  if (rows.length === 0) return said;
  const names = rows.map((row) => row.item.name);
  if (item !== undefined && matchIngredient(item, names).match === 'none') {
    const inRecipe = Object.values(answer.event.recipes).flatMap((lines) => (lines ?? []).map((line) => line.ingredient));
    const why =
      matchIngredient(item, inRecipe).match === 'none'
        ? 'It is in no recipe of this event.'
        : 'It is not on the price list yet, so not on the buying list.';
    return text`${said} ${why}`;
  }
  return text`${said} ${openWords(step === 'ordered' ? 'order' : 'come', rows, answer)}`;
};

const openWords = (what: 'order' | 'come', rows: readonly BuyRow[], { manner }: Answer): Line => {
  const open = rows.filter((row) => row.packs > 0 && (what === 'order' ? row.status === 'to order' : row.status !== 'received'));
  if (open.length === 0) return what === 'order' ? text`Nothing is left to order.` : text`All of it is in.`;
  const items = open.length === 1 ? text`${ownWords(open[0]?.item.name ?? '')}` : text`${open.length} items`;
  const days = open.flatMap((row) => (row.status === 'to order' && row.orderBy ? [row.orderBy] : [])).sort();
  const first = days[0] ? text`, ${open.length === 1 ? 'by' : 'the first by'} ${dateSpan(shortDate(days[0], manner))}` : [];
  return text`Still to ${what}: ${items}, ${moneySpan(manner.money(sum(open.map((row) => row.spend))))}${first}.`;
};
