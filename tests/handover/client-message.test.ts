// The client's confirmation: every figure they need, and not one of ours.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ClientMessage, clientMessage } from '../../src/handover/client-message.ts';
import { priceEvent } from '../../src/pricing/price-event.ts';
import type { EventState } from '../../src/thread/event.ts';
import { decimal, sum } from '../../src/values/decimal.ts';
import { anEvent, eventDay, line, wears, withSettings } from './an-event.ts';

const au = withSettings({ currency: 'AUD', tax: { rate: '10', name: 'GST', usual: 'included' }, sundriesEach: { buttonhole: '0.35' } });

const messageFor = (event: EventState, studio = au): ClientMessage => {
  const priced = priceEvent(studio.settings, event, eventDay);
  if (priced && !priced.ok) throw new Error(JSON.stringify(priced.problem));
  return clientMessage(event, priced?.value);
};

const forty = anEvent({
  lines: [line(40)],
  price: { amount: '25', per: 'each' },
  tax: { basis: 'included' },
  date: eventDay,
  time: '14:00',
});

describe('price and tax', () => {
  // Tax Super and You (Australian Taxation Office, 2021), GST calculator: 1,000 with 10 % in it is 909.09 and 90.91.
  test('40 at 25 including GST', () => {
    const { price, pieces } = messageFor(forty);
    expect([price?.total, price?.beforeTax, price?.tax].map((amount) => amount?.toFixed(2))).toEqual(['1000.00', '909.09', '90.91']);
    expect(price).toMatchObject({ basis: 'included', basisOrigin: 'said', rateOrigin: 'studio', partial: false });
    expect(price?.taxes.map(({ name }) => name)).toEqual(['GST']);
    expect(pieces.map(({ count, price: own }) => [count, own?.each?.toFixed(2), own?.all.toFixed(2)])).toEqual([[40, '25.00', '1000.00']]);
  });

  // Calculating VAT for VAT-inclusive and exclusive prices (HMRC): 100 without VAT is 120 with it at 20 %.
  test('tax on top: the client sees what they pay', () => {
    const event = anEvent({ lines: [line(4)], price: { amount: '25', per: 'each' }, tax: { basis: 'on top', rate: '20', name: 'VAT' } });
    const { price } = messageFor(event, withSettings({}));
    expect([price?.total.toFixed(2), price?.beforeTax.toFixed(2)]).toEqual(['120.00', '100.00']);
  });

  test('a total that some pieces are not in yet says so', () => {
    const event = anEvent({ lines: [line(4, 'buttonhole', { price: { amount: '25', per: 'each' } }), line(1, 'flower crown')] });
    expect(messageFor(event).price?.total.toFixed(2)).toBe('100.00');
    expect(messageFor(event).price?.partial).toBe(true);
    expect(messageFor(event).pieces[1]).toEqual({ piece: 'flower crown', count: 1 });
  });

  test('no price, no figures', () => expect(messageFor(anEvent({ lines: [line(4)] })).price).toBeUndefined());

  test('lines add up to the total', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 900, max: 9999 })), { minLength: 1, maxLength: 4 }),
        (rows) => {
          const lines = rows.map(([count, cents]) =>
            line(count, 'buttonhole', { price: { amount: decimal(cents).div(100).toString(), per: 'each' } }),
          );
          const message = messageFor(anEvent({ lines }));
          expect(sum(message.pieces.map(({ price }) => price?.all ?? decimal('NaN'))).toFixed(2)).toBe(message.price?.total.toFixed(2));
        },
      ),
    );
  });
});

describe('who, when and where', () => {
  const party = { wearers: [wears('groom'), wears('dad', 1, { note: 'has a pacemaker' })] };

  test('wearers, without the notes about them', () => {
    const message = messageFor({ ...forty, ...party });
    expect(message.wearers.map(({ role, count }) => [role, count])).toEqual([
      ['groom', 1],
      ['dad', 1],
    ]);
    expect(JSON.stringify(message)).not.toContain('pacemaker');
    expect(message.differences).toEqual([{ piece: 'buttonhole', wearers: 2, pieces: 40, over: 38 }]);
  });

  test('pinned on at the hand-over when one was said', () => {
    expect(messageFor(forty).handOver).toEqual({ date: eventDay, time: '14:00', said: false });
    expect(messageFor({ ...forty, handOver: { time: '11:30' } }).handOver).toEqual({ date: eventDay, time: '11:30', said: true });
  });

  test('where each kind is worn', () => expect(messageFor(forty).worn).toEqual([{ piece: 'buttonhole', side: 'left lapel' }]));
});

test('no cost, labour or multiple of ours is in it', () => {
  const priced = priceEvent(au.settings, forty, eventDay);
  if (!priced?.ok) throw new Error('not priced');
  const text = JSON.stringify(clientMessage(forty, priced.value));
  const { printed } = priced.value.priced.all;
  for (const ours of [printed.labour, printed.product, printed.wholesale, printed.stems, printed.sundries]) {
    expect(text).not.toContain(ours.toFixed(2));
  }
  expect(text).not.toMatch(/wholesale|labour|sundries|stems|margin|cost|multiple/i);
});
