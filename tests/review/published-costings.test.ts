// Published costings taken as events that came out as planned.

import { describe, expect, test } from 'vitest';
import { anEvent, eventDay, line, withSettings } from '../handover/an-event.ts';
import { review, shown, spent, untaxed } from './past-event.ts';

describe('published costings', () => {
  // What it costs (a studio's page, http://www.zuzuspetalsaustin.com/what-it-costs.htm): a bouquet of flowers 228.48 and hard goods 6.83, labour 25 % of
  // the 235.31 they come to, 58.83, in all 294.14.
  const studio = withSettings({
    ...untaxed,
    labour: { rule: 'on product', share: '25' },
    multiples: { stems: '1', sundries: '1' },
    sundriesEach: { corsage: '6.83' },
  });
  const costed = anEvent({ lines: [line(1, 'corsage')], price: { amount: '294.14', per: 'each' }, date: eventDay });

  test('spent as costed: nothing over, and the same price next time', () => {
    const back = review(studio, { ...costed, actuals: [spent('228.48')] });
    expect(shown(back.all.wholesale.actual)).toBe('235.31');
    expect(shown(back.all.wholesale.over)).toBe('0.00');
    expect(shown(back.all.labour.planned)).toBe('58.83');
    expect(shown(back.next[0]?.price.price)).toBe('294.14');
  });

  test('its labour of 25 % on cost is a markup of 25 and a margin of 20', () => {
    const back = review(studio, { ...costed, actuals: [spent('228.48')] });
    expect(shown(back.afterGoods.markup.actual, 0)).toBe('25');
    expect(shown(back.afterGoods.margin.actual, 0)).toBe('20');
  });

  // Realistic pricing, P. Pickner, Florists' Review, January 2023, p 61: flowers 10 at 3.5 and a vase of 2.50 at 2.5, labour 20 % on product: 49.50.
  const shop = withSettings({
    ...untaxed,
    labour: { rule: 'on product', share: '20' },
    multiples: { stems: '3.5', sundries: '2.5' },
    sundriesEach: { corsage: '2.50' },
  });
  const arrangement = anEvent({ lines: [line(1, 'corsage')], price: { amount: '49.50', per: 'each' }, date: eventDay });

  test('flowers at 10 as planned; at 12 it would have to be 57.90', () => {
    const asPlanned = review(shop, { ...arrangement, actuals: [spent('10')] });
    expect(shown(asPlanned.all.wholesale.over)).toBe('0.00');
    expect(shown(asPlanned.next[0]?.price.price)).toBe('49.50');
    // Derived by the same rule: (12 × 3.5 + 6.25) × 1.2.
    expect(shown(review(shop, { ...arrangement, actuals: [spent('12')] }).next[0]?.price.price)).toBe('57.90');
  });

  // A flower wholesaler's pricing page (https://nbuflowers.com/blogs/blog/tagged/bouquet-price): roses 12 at 3.5, supplies 6 at 2, 20 % of 54: 64.80.
  test('roses and supplies both named in the spending', () => {
    const multiples = { stems: '3.5', sundries: '2' };
    const wholesaler = withSettings({ ...untaxed, labour: { share: '20' }, multiples, sundriesEach: { corsage: '6' } });
    const bouquet = anEvent({ lines: [line(1, 'corsage')], price: { amount: '64.80', per: 'each' }, date: eventDay });
    const back = review(wholesaler, { ...bouquet, actuals: [spent('12', 'roses'), spent('6', 'ribbon')] });
    expect(back.sundriesFrom).toBe('recorded');
    expect(shown(back.all.wholesale.over)).toBe('0.00');
    expect(shown(back.next[0]?.price.price)).toBe('64.80');
  });
});
