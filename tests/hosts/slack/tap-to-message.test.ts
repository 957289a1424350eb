// Taps on buttons as messages: a tap counts once, and what is not for the bot is passed over.

import { expect, test } from 'vitest';
import { asTapDelivery } from '../../../src/hosts/slack/delivery.ts';
import { actionId, stampOf, tapToMessage } from '../../../src/hosts/slack/tap-to-message.ts';
import { tap } from '../../support/slack-deliveries.ts';

const us = { team: 'T1', botUser: 'UBOT' };
const tapped = (delivery: object) => {
  const read = asTapDelivery(delivery);
  return read && tapToMessage(read, us);
};

test('a tap says what was tapped, by whom, in which thread', () => {
  expect(tapped(tap(actionId('made all', 2, 's1'), { value: 'day 7' }))).toMatchObject({
    workspace: 'T1',
    channel: 'C1',
    thread: '1800000000.000100',
    author: 'UAILSA',
    kind: 'tap',
    tap: { action: 'made all', value: 'day 7' },
    addressed: true,
  });
});

const sameMessage = (one: object, other: object): boolean => {
  const [first, second] = [tapped(one), tapped(other)];
  return first?.id === second?.id && first?.revision === second?.revision;
};
const later = '1800000400.000001';

test('tapping twice is one tap for what changes something, whoever taps', () => {
  const button = actionId('made all', 0, 's1');
  expect(sameMessage(tap(button, { value: 'a' }), tap(button, { value: 'a' }, later))).toBe(true);
  expect(sameMessage(tap(button, { value: 'a' }), { ...tap(button, { value: 'a' }), user: { id: 'UMOIRA', team_id: 'T1' } })).toBe(true);
  expect(sameMessage(tap(button, { value: 'a' }), tap(button, { value: 'b' }))).toBe(false);
});

test('after the reply was changed in place, the same button is another', () => {
  const [before, after] = [stampOf('T1/C1/m1/1'), stampOf('T1/C1/m1/2')];
  expect(sameMessage(tap(actionId('choose', 0, before), { value: '0' }), tap(actionId('choose', 0, after), { value: '0' }))).toBe(false);
});

test('a double click shows a file once; asking again later shows it again', () => {
  const button = actionId('calendar file', 0, 's1');
  expect(sameMessage(tap(button, {}, '1800000101.000001'), tap(button, {}, '1800000101.700001'))).toBe(true);
  expect(sameMessage(tap(button, {}), tap(button, {}, later))).toBe(false);
});

test('a picked date comes along on a second line', () => {
  const delivery = tap(actionId('move date', 0, 's1', 'event 3'), { type: 'datepicker', selected_date: '2027-03-21' });
  expect(tapped(delivery)?.tap).toEqual({ action: 'move date', value: 'event 3\n2027-03-21' });
});

test('passed over: forms, other people’s buttons, people of another organisation, unknown actions', () => {
  expect(tapped(tap(actionId('set price', 0, 's1'), { value: 'a' }))).toBeUndefined();
  expect(tapped(tap('approve', { value: 'a' }))).toBeUndefined();
  expect(tapped(tap('reply|drop table|0|s1', { value: 'a' }))).toBeUndefined();
  expect(tapped({ ...tap(actionId('undo', 0, 's1'), { value: 'a' }), user: { id: 'U9', team_id: 'T9' } })).toBeUndefined();
});
