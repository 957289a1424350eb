// Puts what a sentence tells of the work together: which counts belong to which word. Only where it can be done in one way alone.

import type { Unworded } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Token } from '../text/token.ts';
import type { Event } from './work-events.ts';
import type { Told } from './work-forms.ts';
import { allOf, allOfThem, apart, factOf, itemsFrom, kindsFrom, sameKind } from './work-items.ts';
import { type Beside, endOf, type Group, type Taken, together } from './work-together.ts';

const behindCount: ReadonlySet<Told> = new Set<Told>(['done', 'stage', 'lost', 'left', 'again', 'good', 'down', 'whole']);
const beforeCount: ReadonlySet<Told> = new Set<Told>(['done', 'did', 'stage', 'lost', 'toMake', 'again', 'reach']);
const finishing = (event: Event): boolean => event.told === 'done' || event.told === 'did' || event.told === 'again';

/** The ways to read one group that begins at `at`. */
const groupsAt = (events: readonly Event[], at: number, beside: Beside): Taken[] => {
  const ways: Taken[] = [];
  const first = events[at];
  if (first === undefined) return ways;
  if (first.told === 'none')
    ways.push({ group: { start: first.start, end: first.end, facts: [{ fact: 'made', count: 0, ...kindOf(first.kind) }] }, next: at + 1 });
  if (first.told === 'share' && first.fraction !== undefined) {
    const fact: Unworded = { fact: 'made', fraction: first.fraction, ...kindOf(first.kind) };
    ways.push({ group: { start: first.start, end: first.end, facts: [fact] }, next: at + 1 });
    // "half the corsages done, thats 6"
    const behind = apart(events[at + 1]) ? at + 2 : at + 1;
    const six = events[behind + 1];
    if (
      events[behind]?.told === 'reach' &&
      events[behind]?.doubtful === true &&
      !beside.soFar &&
      six?.told === 'count' &&
      six.of === undefined &&
      six.more !== true &&
      (six.kind === undefined || first.kind === undefined || kindOf(six.kind).piece === kindOf(first.kind).piece) &&
      !behindCount.has(events[behind + 2]?.told ?? 'join')
    )
      ways.push({ group: { start: first.start, end: six.end, facts: [factOf('reach', { ...first, ...six }, '')] }, next: behind + 2 });
    // "halfway on the crowns, 5 of 10"
    const item = events[apart(events[at + 1]) ? at + 2 : at + 1];
    const next = apart(events[at + 1]) ? at + 3 : at + 2;
    if (
      item?.told === 'count' &&
      item.of !== undefined &&
      (item.kind === undefined || first.kind === undefined) &&
      !behindCount.has(events[next]?.told ?? 'join')
    )
      ways.push({ group: { start: first.start, end: item.end, facts: [factOf('done', { ...first, ...item }, '')] }, next });
  }
  if (first.told === 'target')
    for (const way of groupsAt(events, apart(events[at + 1]) ? at + 2 : at + 1, beside)) {
      const [fact, second] = way.group.facts;
      const of = first.of ?? 0;
      if (
        second === undefined &&
        fact?.fact === 'made' &&
        fact.of === undefined &&
        fact.stage === undefined &&
        (fact.count ?? of + 1) <= of
      )
        ways.push({
          group: {
            start: first.start,
            end: way.group.end,
            facts: [{ ...kindOf(first.kind), ...fact, of, total: true, ...(fact.count === of ? { all: true as const } : {}) }],
          },
          next: way.next,
        });
    }
  if (first.told === 'count' || (first.told === 'kind' && first.all === true))
    for (const { items, next } of itemsFrom(events, at, beside.line)) {
      const whole = events[next]?.told === 'whole' && events[next + 1]?.told === 'done' ? 1 : 0;
      // "bouts: 10, corsages: 4 - all finished"
      const pause = items.length > 1 && apart(events[next]) && events[next + 1]?.told === 'done' && events[next + 1]?.all === true ? 1 : 0;
      const told = events[next + whole + pause];
      if (told === undefined || !behindCount.has(told.told)) continue;
      if (told.told !== 'done' && items.some((item) => item.told === 'kind')) continue;
      if (told.told === 'down' && !events.some((event) => event.told === 'left' || event.told === 'toMake')) {
        // "8 bouts and 3 wrist corsages down": two kinds told alone; one may be short, or lost.
        const listed = items.length > 1 && items.every((item) => item.kind !== undefined);
        if (!listed || !beside.countFirst || events.some((event) => event.told === 'lost')) continue;
      }
      if (told.told === 'whole' && !events.some(finishing) && items.some((item) => item.of === undefined)) continue;
      if (told.told === 'good' && !events.some((event) => event.told === 'lost')) continue;
      ways.push(together(events, items, told, next + whole + pause + 1, first.start, beside));
      // "12 bouts done and 3 corsages"
      const joint = events[next + whole + 1];
      if (told.told === 'done' && joint?.told === 'join' && (joint.comma !== true || events[next + whole + 2]?.kind !== undefined))
        for (const more of itemsFrom(events, next + whole + 2, () => false)) {
          const all = [...items, ...more.items.map((item) => sameKind(item, items.at(-1)))];
          ways.push(together(events, all, told, more.next, first.start, beside));
        }
    }
  if (beforeCount.has(first.told) && first.behind !== true) {
    // "finished so far: 12 bouts"
    const heads = at + (events[at + 1]?.told === 'whole' ? 2 : 1);
    const head = events[heads];
    const from =
      events.slice(0, at).every((event) => apart(event) || event.told === 'whole') &&
      /^(done|did)$/.test(first.told) &&
      head !== undefined &&
      apart(head) &&
      beside.colon(head)
        ? heads + 1
        : heads;
    for (const { items, next } of itemsFrom(events, from, beside.line)) {
      // "scrap the corsages and 2 bouts": how many were lost is not said.
      if (!/^(done|did)$/.test(first.told) && items.some((item) => item.told === 'kind')) continue;
      // "that's 22 bouts in total made"
      const summed = events[next]?.told === 'whole' && events[next + 1]?.told === 'done' ? next + 1 : next;
      const closing = first.told === 'reach' && /^(done|good)$/.test(events[summed]?.told ?? '') ? summed + 1 : next;
      // "finished the last 4 bouts, that's all 20"
      const allThese = items.every((item) => item.all === true) && events.some(finishing);
      if (first.doubtful !== true || beside.soFar || allThese || closing > next || items.some((item) => item.of !== undefined))
        ways.push(together(events, items, first, closing, first.start, beside));
    }
    const { kinds, next } = kindsFrom(events, at + 1);
    // "finished the crowns" is all of them; "made crowns" may be some.
    if ((first.told === 'done' || first.told === 'did') && kinds.length > 0 && kinds.every((each) => each.all))
      ways.push(
        allOfThem(events, kinds, next, first.start) ?? {
          group: { start: first.start, end: endOf(events, next), facts: allOf(kinds) },
          next,
        },
      );
  }
  if (first.told === 'kind') {
    const { kinds, next } = kindsFrom(events, at);
    // "crowns going well, all done"
    const allDone = apart(events[next]) && events[next + 1]?.told === 'done' && events[next + 1]?.all === true;
    const done = allDone && events[next + 2]?.told !== 'count' ? next + 1 : next;
    if (events[done]?.told === 'done')
      ways.push(
        allOfThem(events, kinds, done + 1, first.start) ?? {
          group: { start: first.start, end: (events[done] as Event).end, facts: allOf(kinds) },
          next: done + 1,
        },
      );
    // "bouts: 14 of 18", "corsages 9/12 now"
    const item = events[apart(events[at + 1]) ? at + 2 : at + 1];
    const after = apart(events[at + 1]) ? at + 3 : at + 2;
    if (
      item?.of !== undefined &&
      item.kind === undefined &&
      !behindCount.has(events[after]?.told ?? 'join') &&
      (after < events.length || beside.soFar || item.slashed !== true)
    )
      ways.push({
        group: { start: first.start, end: item.end, facts: [factOf('done', { ...item, kind: first.kind as Token }, '')] },
        next: after,
      });
    // "bouts: 12 made", "bouts - made 12, 8 left"
    for (const way of groupsAt(events, apart(events[at + 1]) ? at + 2 : at + 1, beside))
      if (way.group.facts.every((fact) => !('piece' in fact)))
        ways.push({
          group: {
            ...way.group,
            start: first.start,
            facts: way.group.facts.map((fact) => ({ ...fact, ...kindOf(first.kind) }) as Unworded),
          },
          next: way.next,
        });
  }
  return ways;
};

/** The groups of the whole stretch, if there is exactly one way to make them. */
export const workGroups = (events: readonly Event[], beside: Beside): readonly Group[] | undefined => {
  let found: Group[] | undefined;
  let ways = 0;
  const go = (at: number, groups: readonly Group[]): void => {
    if (ways > 1) return;
    let index = at;
    while (apart(events[index]) || events[index]?.told === 'whole') index += 1;
    if (index >= events.length) {
      if (groups.length === 0) return;
      ways += 1;
      found = [...groups];
      return;
    }
    for (const way of groupsAt(events, index, beside)) go(way.next, [...groups, way.group]);
  };
  if (events.length <= 24) go(0, []);
  return ways === 1 ? found : undefined;
};
