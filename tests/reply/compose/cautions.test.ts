// Each caution for its trigger and never without it; two at most in a reply, and each once in a thread.

import { describe, expect, test } from 'vitest';
import type { CautionId } from '../../../src/handbook/caution-row.ts';
import { cautionsFor } from '../../../src/handbook/cautions.ts';
import { cautionRows } from '../../../src/handbook/cautions-table.ts';
import { hazardsIn } from '../../../src/handbook/hazard-words.ts';
import type { Material, PieceKind } from '../../../src/handbook/pieces.ts';
import type { Fact } from '../../../src/reading/fact.ts';
import { cautionLine } from '../../../src/reply/compose/cautions.ts';
import { composeAnswer } from '../../../src/reply/compose/compose.ts';
import { lineToText } from '../../../src/reply/reply-to-text.ts';
import { newStudio } from '../../../src/studio/studio.ts';
import { applyFacts } from '../../../src/thread/apply-facts.ts';
import { type EventState, newEvent } from '../../../src/thread/event.ts';
import { anEvent, line, wears } from '../../handover/an-event.ts';
import { anAnswer } from '../../support/an-answer.ts';
import { demoStudio } from '../../support/converse.ts';
import { pieces } from '../../support/facts.ts';

const around = { studio: newStudio(demoStudio) };
const said = pieces(4, 'buttonhole');

/** An order as it stands after a message, with the hazards its words told of. */
const thread = (words: string, more: Partial<EventState> = {}, kind: PieceKind = 'buttonhole'): EventState => {
  const event = anEvent({ lines: [line(4, kind)], ...more });
  const heard = hazardsIn(words);
  return heard.length > 0 ? applyFacts(event, [{ fact: 'care', heard: [...heard], words: '' }]) : event;
};
const made = (material: Material): Partial<EventState> => ({ material });
const withIn = (ingredient: string): Partial<EventState> => ({ recipes: { any: [{ ingredient, stems: 1 }] } });

/** The ids a thread shows when it goes on being talked in, reply after reply. */
const shownIn = (event: EventState, stated: readonly Fact[] = [said]): readonly (readonly string[])[] => {
  const replies: (readonly string[])[] = [];
  let state = event;
  for (let turn = 0; turn < 8; turn += 1) {
    const { cautioned } = composeAnswer(anAnswer(state, around, { stated, before: newEvent }));
    replies.push(cautioned);
    if (cautioned.length > 0) state = applyFacts(state, [{ fact: 'care', shown: [...cautioned], words: '' }]);
  }
  return replies;
};

const triggers: [CautionId, string, EventState, readonly Fact[]][] = [
  ['magnet', 'magnets said', thread('on magnets please'), [said]],
  ['magnet', 'a magnet in the recipe', thread('', withIn('magnet')), [said]],
  ['magnet', 'a pacemaker said', thread('grandad has a pacemaker'), [said]],
  ['magnet', 'a pacemaker noted beside a wearer', thread('', { wearers: [wears('grandfather', 1, { note: 'pacemaker' })] }), [said]],
  ['magnet-child', 'magnets and a page boy', thread('magnets', { wearers: [wears('page boy')] }), [said]],
  ['pin-child', 'a page boy with a pinned piece', thread('', { wearers: [wears('page boy')] }), [said]],
  ['wire-ends', 'wire in the recipe', thread('', withIn('rose wire')), [said]],
  ['allergy', 'an allergy said', thread('the best man is allergic to lilies'), [said]],
  ['sap', 'euphorbia', thread('', withIn('euphorbia')), [said]],
  ['skin', 'alstroemeria', thread('', withIn('alstroemeria')), [said]],
  ['poisonous', 'delphinium', thread('', withIn('delphinium')), [said]],
  ['pollen', 'statice', thread('', withIn('statice')), [said]],
  ['pollen-disputed', 'goldenrod', thread('', withIn('goldenrod')), [said]],
  ['scent', 'gardenia', thread('', withIn('gardenia')), [said]],
  ['dried-dust', 'dried', thread('', made('dried')), [said]],
  ['silica', 'silica gel said', thread('we dry them in silica gel'), [said]],
  ['silica-blue', 'silica gel said', thread('we dry them in silica gel'), [said]],
  ['borax', 'borax said', thread('in borax'), [said]],
  ['hot-glue', 'a glue gun', thread('with the glue gun'), [said]],
  ['flame', 'candles by dried work', thread('candles on every table', made('dried')), [said]],
  ['flame', 'candles in the name of the event', thread('', { ...made('dried'), title: 'candlelit supper' }), [said]],
  ['foraging', 'foraged', thread('foraged from the lane'), [said]],
  ['protected', 'foraged, in the recipe', thread('', withIn('foraged ivy')), [said]],
  ['invasive', 'ivy', thread('', withIn('ivy')), [said]],
  ['border', 'customs', thread('have to get them through customs'), [said]],
  ['wages', 'a wage', thread(''), [{ fact: 'crew', wage: '12.71', words: '12.71 an hour' }]],
];

describe('for its trigger', () => {
  test.each(triggers)('%s: %s', (id, _why, event, stated) => expect(shownIn(event, stated).flat()).toContain(id));

  test('every caution of the handbook has a trigger here but tax, which the price says itself', () =>
    expect(new Set([...triggers.map(([id]) => id), 'tax'])).toEqual(new Set(cautionRows.map(({ id }) => id))));
});

const flowerGirl = anEvent({ lines: [line(2, 'flower crown'), line(1)], wearers: [wears('flower girl'), wears('groom')] });

describe('never without it', () => {
  test('a plain order of nothing said is cautioned about nothing', () => expect(shownIn(thread('')).flat()).toEqual([]));

  test.each<[string, EventState, CautionId]>([
    ['candles by fresh work', thread('candles on every table', made('fresh')), 'flame'],
    ['no candles', thread('no candles at all', made('dried')), 'flame'],
    ['LED candles', thread('LED candles only', made('dried')), 'flame'],
    ['magnets and grown-ups', thread('magnets', { wearers: [wears('groom')] }), 'magnet-child'],
    ['a flower girl in a crown', thread('', { wearers: [wears('flower girl')] }, 'flower crown'), 'pin-child'],
    ['a flower girl in a crown beside a groom with a pin', flowerGirl, 'pin-child'],
    ['silk statice', thread('', { ...made('artificial'), ...withIn('silk statice') }), 'pollen'],
    ['fresh', thread('', made('fresh')), 'dried-dust'],
    ['not foraged', thread('not foraged'), 'foraging'],
    ['a border of flowers', thread('a flower border along the aisle'), 'border'],
  ])('%s', (_why, event, id) => expect(shownIn(event).flat()).not.toContain(id));

  test.each(triggers)('%s goes when its trigger does: %s', (id, _why, event) => {
    const { care: _care, title: _title, material: _material, ...rest } = event;
    expect(shownIn({ ...rest, wearers: [], recipes: {} }).flat()).not.toContain(id);
  });
});

describe('once in a thread, two at most in a reply', () => {
  const all = thread('silica gel, borax, magnets, the glue gun, candles, customs, foraged, a pacemaker', {
    ...made('dried'),
    wearers: [wears('page boy')],
  });

  test('the rest wait for the next reply, and none comes twice', () => {
    const replies = shownIn(all);
    expect(Math.max(...replies.map((ids) => ids.length))).toBe(2);
    expect(new Set(replies.flat()).size).toBe(replies.flat().length);
    expect(replies.flat()).toEqual(
      expect.arrayContaining(['magnet', 'magnet-child', 'pin-child', 'silica', 'silica-blue', 'borax', 'hot-glue']),
    );
  });

  test('after the answer, in the words of the handbook, with who has the last word', () => {
    const blocks = composeAnswer(anAnswer(thread('magnets'), around, { stated: [said] })).reply.blocks;
    const [caution] = cautionsFor({ fixings: ['magnet'] });
    const at = blocks.findIndex(({ block }) => block === 'caution');
    expect(at).toBeGreaterThan(blocks.findIndex(({ block }) => block === 'answer'));
    const shown = blocks[at];
    expect(shown?.block === 'caution' && lineToText(shown.line)).toBe(caution && lineToText(cautionLine(caution)));
    expect(shown?.block === 'caution' && lineToText(shown.line)).toMatch(/Not medical advice\.$/);
  });

  test('not before people of another studio, not with a deletion, not with a question alone', () => {
    const event = thread('magnets');
    for (const more of [{ shared: true, stated: [said] }, { how: 'withdrawn' as const }, { before: event }])
      expect(composeAnswer(anAnswer(event, around, more)).cautioned).toEqual([]);
  });

  test('a message that only tells of a hazard is answered in a word', () => {
    const { reply } = composeAnswer(anAnswer(thread('we pin with magnets'), around, { unread: ['magnets'] }));
    const [first] = reply.blocks;
    expect(first?.block === 'answer' && lineToText(first.line)).toBe('Noted: magnets.');
    expect(JSON.stringify(reply.blocks)).not.toContain('Not used');
  });
});
