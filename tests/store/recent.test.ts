// The memory of what was last read: bounded, and never of something that has changed.

import { expect, it } from 'vitest';
import { recent } from '../../src/store/recent.ts';
import type { Day } from '../../src/values/day.ts';
import { buttonholes, key, message, onDay, tell, workspace } from './builders.ts';
import { newPath, open } from './in-folder.ts';

it('the least recently used goes first', () => {
  const memory = recent<number>(2);
  memory.set('a', 1);
  memory.set('b', 2);
  memory.set('a', 3);
  memory.set('c', 4);
  expect([memory.get('a'), memory.get('b'), memory.get('c')]).toEqual([3, undefined, 4]);
});

it('open events are what the threads now say, whatever was read before', () => {
  const store = open(newPath());
  const counts = () => store.openEvents(workspace, '2027-01-20' as Day).map(({ state }) => state.lines[0]?.count);
  tell(store, message('m1', { thread: 't1' }), [buttonholes(40), onDay('2027-03-14')]);
  tell(store, message('m2', { thread: 't2' }), [buttonholes(12), onDay('2027-03-13')]);
  expect(counts()).toEqual([12, 40]);
  tell(store, message('m3', { thread: 't1' }), [buttonholes(45)]);
  expect(counts()).toEqual([12, 45]);
  store.forget(key('t2'), message('m2', { thread: 't2' }), []);
  expect(counts()).toEqual([45]);
  tell(store, message('m4', { thread: 't3' }), [buttonholes(7), onDay('2027-03-01')]);
  expect(counts()).toEqual([7, 45]);
});

it('an unchanged snapshot is the same object, a changed one is not', () => {
  const store = open(newPath());
  tell(store, message('m1', { thread: 't1' }), [buttonholes(40), onDay('2027-03-14')]);
  tell(store, message('m2', { thread: 't2' }), [buttonholes(12), onDay('2027-03-13')]);
  const states = () => store.openEvents(workspace, '2027-01-20' as Day).map(({ state }) => state);
  const [second, first] = states();
  tell(store, message('m3', { thread: 't1' }), [buttonholes(45)]);
  expect(states()[0]).toBe(second);
  expect(states()[1]).not.toBe(first);
});
