// Looking back, read aloud: what was left, planned against real, what it would have to cost next time, and what is offered but not yet stored.

import { describe, expect, test } from 'vitest';
import type { FactOf } from '../../../src/reading/fact.ts';
import { composeAnswer } from '../../../src/reply/compose/compose.ts';
import { replyToText } from '../../../src/reply/reply-to-text.ts';
import type { EventState } from '../../../src/thread/event.ts';
import { settleSpent } from '../../../src/thread/settle-spent.ts';
import type { Day } from '../../../src/values/day.ts';
import { anEvent, eventDay, line, withSettings, yard } from '../../handover/an-event.ts';
import { dayAfter, spent, took, unused } from '../../review/past-event.ts';
import { anAnswer, asked, stating } from '../../support/an-answer.ts';

// Tax Super and You (Australian Taxation Office, 2021): 1,000 with GST of 10 % in it is 909.09. From there by the rules of the design: labour 30 % on
// product and four times wholesale leave 174.83. Wage 31.19: the casual minimum from 1 July 2025, as reprinted in hospitalitydirectory.com.au.
const studio = withSettings({
  currency: 'AUD',
  tax: { rate: '10', name: 'GST', usual: 'included' },
  labour: { wage: '31.19' },
  minutes: { buttonhole: 15 },
});
const after = { studio, today: dayAfter };
const forty: Partial<EventState> = { lines: [line(40)], price: { amount: '25', per: 'each' }, date: eventDay };
const back = (actuals: EventState['actuals'], more: Partial<EventState> = {}): string =>
  asked('review', anEvent({ ...forty, ...more, actuals }), after);

describe('how did we do', () => {
  const text = back([spent('182.40', 'everything'), took(540)]);

  test('first what was left, of the price before tax, against the plan', () => {
    // 909.09 − 182.40 − 9 × 31.19 = 445.98, 49.1 % of 909.09; planned 909.09 − 174.83 − 209.79 = 524.47, 57.7 %.
    expect(text.split('\n')[0]).toBe(
      '$445.98 left after stems, sundries and labour, 49.1 % of the price before tax; planned $524.47 (57.7 %).',
    );
  });

  test('then planned and real, in all and for one', () => {
    expect(text).toMatch(
      /all 40 +planned +really +more\nWholesale +\$174\.83 +\$182\.40 +\$7\.57\nLabour +\$209\.79 +\$280\.71 +\$70\.92\n/,
    );
    expect(text).toMatch(/Bench time +10 h +9 h +−1 h/);
    expect(text).toMatch(/one piece +planned +really +more\nWholesale +\$4\.37 +\$4\.56 +\$0\.19\n/);
    expect(text).toMatch(/Bench time +15 min +13\.5 min +−1\.5 min/);
  });

  test('then the price it would have to have', () =>
    expect(text).toMatch(/- a buttonhole: \$\d+\.\d\d, for the time it took \(was \$25\.00\)/));

  // 30 % markup is 23.1 % margin: Markups vs margins, B. Moyer (Penn State Extension), Fruit Growers News, 15 May 2024.
  test('margin and markup are told apart', () => {
    const labourOnly = withSettings({ ...studio.settings, multiples: { stems: '1', sundries: '1' }, labour: { share: '30' } });
    const words = asked('review', anEvent({ ...forty, actuals: [spent('699.30', 'everything')] }), { studio: labourOnly, today: dayAfter });
    expect(words).toContain('margin 23.1 % of the price before tax, which is a markup of 30 % on their cost');
  });

  test('a loss is called one', () =>
    expect(back([spent('1200', 'everything')])).toMatch(/^\$290\.91 lost after stems and sundries, labour not counted/));

  test('what is not known is not compared', () => {
    expect(back([took(540)])).toMatch(/^It took 9 h at the bench\./);
    expect(
      back([spent('182.40', 'everything')], {
        lines: [line(40), line(2, 'flower crown', { price: { amount: '90', per: 'each' } })],
        price: { amount: '25', per: 'each' },
      }),
    ).toContain('left');
    const wageless = withSettings({ currency: 'AUD', tax: { rate: '10', usual: 'included' } });
    expect(asked('review', anEvent({ ...forty, actuals: [took(540)] }), { studio: wageless, today: dayAfter })).toContain(
      "Without a wage in your settings I can't say what the time cost.",
    );
  });

  test('broken and unused pieces are counted', () => {
    const words = back([unused(3)], { progress: { buttonhole: { made: 40, broke: 2 } } });
    expect(words).toContain('2 buttonholes broke, of 40: 5 % spare would have covered them.');
    expect(words).toContain('3 not used.');
  });
});

describe('too soon, or nothing told', () => {
  test('before the event: its date, and what is known so far', () => {
    const words = asked('review', anEvent({ ...forty, actuals: [spent('182.40', 'everything')] }), { studio, today: '2027-01-20' as Day });
    expect(words).toMatch(/^The event is on Sat 13 March 2027: ask again once it is over\.\nSo far:\nSpent: \$182\.40; \$174\.83 planned/);
  });
  test('nothing told', () =>
    expect(back([])).toBe('Nothing real is recorded yet. Say “spent 182.40”, “took 9 hours” or “3 unused”, and I can compare.'));
  test('no pieces', () => expect(asked('review', anEvent({}), after)).toBe('There are no pieces in this thread to look back on.'));
});

describe('noted with what it means', () => {
  const noted = (fact: FactOf<'actual'>, more: Partial<EventState> = {}): string =>
    replyToText(stating([fact], anEvent({ ...forty, ...more, actuals: [fact] }), after)).split('\n')[0] ?? '';

  test.each<[FactOf<'actual'>, string]>([
    [spent('182.40', 'everything'), 'Spent: $182.40; $174.83 planned for stems and sundries: $7.57 over.'],
    [spent('150', 'stems'), 'Spent: $150.00; $174.83 planned for stems: $24.83 under.'],
    [took(540), 'Took 9 h; 10 h planned: 1 h under.'],
    [took(600), 'Took 10 h; 10 h planned: just as planned.'],
    [took(180, 12), 'Took 3 h for 12: 15 min each; planned 15.'],
    [unused(3), '3 not used, noted. If they were stems, say which: “3 statice unused”.'],
    [unused(2, 'moss'), '2 moss not used, noted.'],
  ])('%o', (fact, words) => expect(noted(fact)).toBe(words));

  test('ribbon alone is compared with the sundries', () => {
    const withSundries = { studio: withSettings({ ...studio.settings, sundriesEach: { buttonhole: '0.75' } }), today: dayAfter };
    const fact = spent('40', 'ribbon');
    expect(replyToText(stating([fact], anEvent({ ...forty, actuals: [fact] }), withSundries))).toMatch(
      /^Spent: \$40\.00; \$30\.00 planned for sundries: \$10\.00 over\./,
    );
  });

  test('without a price there is nothing to compare with', () => {
    const { price: _, ...unpriced } = forty;
    expect(replyToText(stating([spent('80', 'stems')], anEvent({ ...unpriced, actuals: [spent('80', 'stems')] }), after))).toMatch(
      /^Spent: \$80\.00, noted\. There is no price to compare it with\./,
    );
  });
});

describe('a bare spending is asked about', () => {
  const said = (words: string): FactOf<'actual'> => ({ fact: 'actual', what: 'spent', amount: '182.40', words });

  test.each(['spent 182.40', 'paid 182.40'])('%s', (words) => {
    const settled = settleSpent(said(words));
    expect('ask' in settled && settled.ask.choices.map((choice) => choice.words)).toEqual(['stems only', 'everything']);
  });
  test.each([
    ['spent 182.40 at the market', undefined],
    ['spent 182.40 on flowers', undefined],
    ['paid 182.40 for ribbon', undefined],
    ['spent 182.40 all up', 'everything'],
    ['spent 182.40 on everything', 'everything'],
    ['spent 182.40 on stems and ribbon', 'everything'],
  ])('%s tells', (words, item) => {
    const settled = settleSpent(said(words));
    expect('fact' in settled && settled.fact.item).toBe(item);
  });
});

describe('what it taught', () => {
  const review = (event: EventState) =>
    composeAnswer(anAnswer(event, after, { questions: [{ fact: 'question', asks: 'review', words: 'review' }] }));

  test('is offered as a choice that states the fact, and nothing is stored by looking', () => {
    const composed = review(anEvent({ ...forty, actuals: [took(480)] }));
    expect(replyToText(composed.reply)).toMatch(
      /Plan with this from now on\? Nothing changes until you choose\.\nSay: 12 min a buttonhole$/,
    );
    const open = composed.asks;
    const [choice] = open?.kind === 'choice' ? open.ask.choices : [];
    expect(choice?.facts).toMatchObject([{ fact: 'crew', piece: 'buttonhole', minutesPerPiece: 12 }]);
  });

  test('is not offered where it is what the studio plans with already', () =>
    expect(review(anEvent({ ...forty, actuals: [took(600)] })).asks).toBeUndefined());
});

describe('the season', () => {
  const past = (thread: string, title: string, actuals: EventState['actuals'], date = eventDay) => ({
    thread,
    state: anEvent({ ...forty, title, date, actuals }),
  });
  const others = [
    past('a', 'harbour dance', [spent('182.40', 'stems'), took(540)]),
    past('b', 'quay supper', [spent('150', 'stems')], '2027-02-06' as Day),
    past('c', 'net loft wedding', []),
    past('d', 'summer fair', [spent('90', 'stems')], '2027-06-05' as Day),
  ];

  test('one row an event by date, their sums, and who is left out and why', () => {
    const text = asked('season', anEvent({}), { ...after, others });
    expect(text).toMatch(/^2 events, 80 pieces: \$332\.40 on stems and sundries, \$349\.65 planned;/);
    expect(text).toMatch(/quay supper, Sat 6 February +\$174\.83 +\$150\.00 +83\.5 %\nharbour dance, Sat 13 March +\$174\.83 +\$182\.40 /);
    expect(text).toContain('Not in it: net loft wedding (nothing told), summer fair (still to come).');
    expect(text).toContain('[season.csv]');
  });

  test('none yet', () => expect(asked('season', anEvent({}), { studio: yard })).toMatch(/^No event has been looked back on yet\./));
});
