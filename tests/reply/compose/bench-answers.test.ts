// What the bench says when it is asked or is too full: the answer in the first line, proven cures as a short list, never more than a phone's screen.
// The demo yard: two people, four hours Tuesday to Thursday, five on Friday; 15 min a buttonhole.

import { describe, expect, it } from 'vitest';
import type { StudioSettings } from '../../../src/studio/settings.ts';
import { benchTalk } from '../../support/bench-talk.ts';
import { demoStudio } from '../../support/converse.ts';

const screen = 24; // lines of text on a phone
const now = '2027-03-09T09:00:00Z'; // a Tuesday

/** The last reply of these messages, each told in the thread that stands before the bar. */
const answer = (messages: readonly string[], at = now, studio: StudioSettings = demoStudio): string => {
  const talk = benchTalk({ now: at, studio });
  let last = '';
  for (const message of messages) {
    const [thread = '', text = ''] = message.includes('|') ? message.split('|') : ['t1', message];
    last = talk.say(thread, text);
  }
  talk.close();
  return last;
};
const first = (text: string): string => text.split('\n')[0] ?? '';

describe('an overloaded bench', () => {
  const crowded = answer(['70 buttonholes fresh, event 13 March at 2pm', 'when do we start?']);

  it('says how much is short, where, and what is enough', () => {
    expect(first(crowded)).toBe('For Sat 13 March 2027: it does not fit the bench, 7 h 30 min short.');
    expect(crowded).toContain('On Fri 12 March the bench has 10 h for 17 h 30 min of work');
    expect(crowded).toContain('- 7 h 30 min more at the bench on Fri 12 March');
    expect(crowded).toContain('- make the fresh ones a day earlier and keep them cool, up to 48 h ahead');
    expect(crowded).toContain('- make 30 buttonholes fewer (40 fit)');
  });

  it('offers cures that hold when they are carried out', () => {
    const fewer = answer(['70 buttonholes fresh, event 13 March at 2pm', 'make that 40 buttonholes', 'are we ok for Saturday?']);
    expect(first(fewer)).not.toMatch(/^No/);
    const more = answer(['70 buttonholes fresh, event 13 March at 2pm', '4 of us fri, 5 hrs each', 'are we ok for Saturday?']);
    expect(first(more)).not.toMatch(/^No/); // 20 h where 17 h 30 min are needed
  });

  it('speaks of the event asked about, not of the others that are short too', () => {
    const own = answer([
      't1|70 buttonholes fresh, event 13 March at 2pm',
      't2|60 buttonholes fresh, event 20 March at 2pm',
      't2|when do we start?',
    ]);
    expect(own).toContain('On Fri 19 March the bench has 10 h for 15 h of work: 5 h short.');
    expect(own).not.toContain('13 March');
  });

  it('names only what each late step needs, and never a step that merely waits', () => {
    const late = answer(['40 buttonholes dried, event 20 March', 'when do we start?']);
    expect(late).toContain('Already late: the order (');
    expect(late).not.toContain('drying check (');
    expect(late).toContain('Still possible:');
    expect(late).toMatch(/- buy it ready dried: here Fri 12 March \(in time\)/);
  });

  it('beside a price says only that something is wrong and where to ask', () => {
    const priced = answer(['70 buttonholes fresh at 25 inc, event 13 March at 2pm']);
    expect(priced).toContain('7 h 30 min short');
    expect(priced).not.toContain('would be enough');
    expect(priced).toContain('Ask “when do we start?”');
  });
});

describe('orders that cannot be', () => {
  const table: readonly (readonly [what: string, messages: readonly string[], says: readonly (string | RegExp)[]])[] = [
    [
      'dried, for tomorrow',
      ['40 buttonholes dried, event tomorrow', 'when do we start?'],
      [
        'does not fit the bench, 2 h short',
        'Already late: the order',
        'make them fresh on Tue 9 March',
        '2 h more at the bench on Tue 9 March',
      ],
    ],
    ['on a closed day', ['20 buttonholes dried, event Sunday 4 April', 'calendar'], [/Hand over +Fri 2 April\*/, 'start on']],
    [
      'ten thousand',
      ['10000 buttonholes dried, event 14 March', 'when do we start?'],
      ['h short', /make [\d,]+ buttonholes fewer \(\d+ fit\)/],
    ],
    [
      'material not said',
      ['30 corsages, event 20 March', 'when do we start?'],
      ['Nobody has said dried or fresh', 'fresh, or bought ready dried, is still open'],
    ],
    ['a past event', ['20 buttonholes dried, event 14 March', 'when do we start?'], ['there is nothing left to plan']],
  ];
  it.each(table)('%s: the honest answer and the nearest thing that works', (what, messages, says) => {
    const talk = benchTalk({ now });
    let text = '';
    for (const message of messages) {
      if (what === 'a past event' && message.endsWith('?')) talk.setClock('2027-03-20T09:00:00Z');
      text = talk.say('t1', message);
    }
    talk.close();
    for (const part of says) expect(text).toMatch(part);
    expect(text.split('\n').length).toBeLessThanOrEqual(screen);
  });

  it('nobody on the bench: says so and how to say who is', () => {
    const nobody: StudioSettings = { ...demoStudio, bench: { ...demoStudio.bench, people: 0 } };
    const text = answer(['20 buttonholes dried, event 27 March', 'when do we start?'], now, nobody);
    expect(text).toContain('Nobody is at the bench');
    expect(text).toContain('“2 of us thu, 4 hrs each”');
  });
});

describe('questions that only compute', () => {
  const order = '40 buttonholes dried, event 14 March';
  const january = '2027-01-20T09:00:00Z';

  it.each([
    ['when do we start?', 'For Sun 14 March 2027: start on Wed 10 March.'],
    ['are we ok for 14 March?', 'Yes: for Sun 14 March 2027 it fits the bench, 10 h of work left.'],
    ['are we ok for Saturday?', 'Yes: nothing is to be handed over by Sat 23 January 2027.'],
    ["what's on the bench this week?", 'Nothing is due from Wed 20 January to Tue 26 January 2027.'],
    ['what if one of us is away 11 March?', 'Yes, it fits: with one of you away on Thu 11 March 2027.'],
    ['can we take another 30 for the 20th of March?', 'Yes, it fits: 30 buttonholes more for Sat 20 March 2027 (dried, like these).'],
    [
      'when do we need to start drying',
      'Hang them by Fri 12 February. Begin checking on Wed 17 February, dry by Fri 5 March at the latest.',
    ],
  ])('“%s” begins with its answer and changes nothing', (question, line) => {
    const talk = benchTalk({ now: january });
    talk.say('t1', order);
    const before = talk.stateOf('t1');
    const text = talk.say('t1', question);
    expect(first(text)).toBe(line);
    expect(text.split('\n').length).toBeLessThanOrEqual(screen);
    expect({ ...talk.stateOf('t1'), open: undefined, care: undefined }).toEqual({ ...before, open: undefined, care: undefined });
    talk.close();
  });

  it('takes a bare day as this event’s own, else as the next there is', () => {
    const fits = (asked: string): string => first(answer(['12 corsages dried, event 20 March', asked], january));
    expect(fits('can we take another 30 for the 20th?')).toContain('for Sat 20 March 2027');
    expect(fits('can we take another 30 for the 20th of February?')).toContain('for Sat 20 February 2027');
    expect(fits('can we take another 30 for the 25th?')).toContain('for Mon 25 January 2027');
  });

  it('takes both of two people away', () => {
    const text = answer([order, 'what if both of us are away 11 March?'], january);
    expect(first(text)).toBe('Yes, it fits: with 2 of you away on Thu 11 March 2027.');
    expect(text).toContain('start on Tue 9 March instead of Wed 10 March');
  });

  it('names what a yes costs', () => {
    expect(answer([order, 'what if one of us is away 11 March?'], january)).toContain('start on Tue 9 March instead of Wed 10 March');
  });

  it('says no with what would be enough', () => {
    const text = answer([order, 'can we take another 200 for 14 March?'], now);
    expect(first(text)).toMatch(/^No: 200 buttonholes more for Sun 14 March 2027 \(dried, like these\), the bench is .* short\.$/);
    expect(text).toContain('would be enough');
    expect(text).toContain('nothing has changed');
  });

  it('lists a week by its days, overdue things counted once', () => {
    const text = answer([order, "what's on the bench this week?"]);
    expect(first(text)).toBe('Tue 9 March to Mon 15 March 2027: 40 pieces to make, 10 h.');
    expect(text.match(/overdue/g)).toHaveLength(1);
    expect(text).toContain('Wed 10 March\n- make 18 buttonholes');
  });
});

describe('why these dates?', () => {
  const why = answer(['40 buttonholes dried, event 14 March', 'why these dates?'], '2027-01-20T09:00:00Z');

  it('gives each step its source and grade', () => {
    // Iowa State University Extension, Drying Flowers (1998): hanging takes two to three weeks; the range spans all sources of the handbook.
    expect(why).toMatch(
      /Hang to dry Fri 12 February: moved off .*, a closed day; 5 to 21 days; .*Iowa State.*1998 \(official\) and \d more/,
    );
    expect(why).toMatch(/Recipe, ribbon .*: common practice, no source/);
    expect(why).toMatch(/Order by .*: your own figure/);
    expect(why).toMatch(/Event .*: as you said/);
  });

  it('shows drying days that sources disagree on as a range, and the studio’s own as its own', () => {
    const text = answer(
      ['40 buttonholes dried, event 14 March', 'we dry statice 10 days', 'each: 3 stems statice', 'when do we need to start drying'],
      '2027-01-20T09:00:00Z',
    );
    expect(text).toContain('10 days for statice, your own figure');
  });
});

describe('minutes learned', () => {
  const order = ['40 buttonholes dried, event 14 March', 'made 9, took 3 hours for 9'];

  it('are offered, and stored only when taken', () => {
    expect(answer(order)).toContain('20 min a buttonhole / keep 15');
    expect(answer([...order, 'when do we start?'])).toContain('10 h at the bench');
    expect(answer([...order, '20 min', 'how long will 40 buttonholes take?'])).toContain('13 h 20 min');
    expect(answer([...order, 'keep', 'how long will 40 buttonholes take?'])).toContain('10 h');
  });

  it('are not offered where they are what is planned with', () => {
    expect(answer(['40 buttonholes dried, event 14 March', 'took 3 hours for 12'])).not.toContain('Plan with this');
  });
});
