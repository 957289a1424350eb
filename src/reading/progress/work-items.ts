// The counted pieces of a sentence about the work that stand together, and the fact that each gives.

import type { Unworded } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Event } from './work-events.ts';
import type { Told } from './work-forms.ts';

/** What lies between two matters: "and", a comma, a dash, a line. */
export const apart = (event: Event | undefined): boolean => event?.told === 'join' || event?.told === 'stop';

export const factOf = (told: Told, item: Event, stage: string): Unworded => {
  const count = item.count ?? 0;
  const piece = kindOf(item.kind);
  if (told === 'lost') return { fact: 'broke', count, ...piece };
  if (told === 'left' || told === 'toMake') return { fact: 'left', count, ...piece };
  if (told === 'again') return { fact: 'made', count, remade: true, ...piece };
  if (item.told === 'kind') return { fact: 'made', all: true, ...piece };
  if (told === 'stage') return { fact: 'made', count, stage, ...piece };
  if (item.of !== undefined)
    return { fact: 'made', count, of: item.of, total: true, ...(count === item.of ? { all: true as const } : {}), ...piece };
  const whole =
    told === 'reach' || told === 'good' || told === 'whole' || (told === 'done' && item.soFar === true) ? { total: true as const } : {};
  return { fact: 'made', count, ...whole, ...(item.spares === undefined ? {} : { spares: item.spares }), ...piece };
};

// Items that stand together: joined by "and", or side by side where each names its kind.
export const itemsFrom = (events: readonly Event[], at: number, line: (event: Event) => boolean): { items: Event[]; next: number }[] => {
  const ways: { items: Event[]; next: number }[] = [];
  const items: Event[] = [];
  let index = at;
  while (events[index]?.told === 'count' || (events[index]?.told === 'kind' && events[index]?.all === true)) {
    items.push(events[index] as Event);
    index += 1;
    const kinds = items.filter((item) => item.kind !== undefined).length;
    if ((kinds === items.length || kinds === 0) && items.some((item) => item.told === 'count'))
      ways.push({ items: [...items], next: index });
    let joint = index;
    while (events[joint]?.told === 'join') joint += 1;
    // "made 12, 29 now" is no list; "12 and 8" is.
    if (joint > index && items.at(-1)?.kind === undefined && events.slice(index, joint).every((event) => event.comma === true)) break;
    if (joint === index && events[index]?.told === 'stop' && line(events[index] as Event)) joint += 1;
    if (joint === index && (items.at(-1)?.kind === undefined || events[index]?.kind === undefined)) break;
    index = joint;
  }
  return ways;
};

export const kindsFrom = (events: readonly Event[], at: number): { kinds: Event[]; next: number } => {
  const kinds: Event[] = [];
  let index = at;
  while (events[index]?.told === 'kind') {
    kinds.push(events[index] as Event);
    index += 1;
    if (events[index]?.told === 'join' && events[index + 1]?.told === 'kind') index += 1;
  }
  return { kinds, next: index };
};

// "10 bouts made this morning and 5 this afternoon": bouts still.
export const sameKind = (item: Event, before: Event | undefined): Event =>
  item.kind === undefined && before?.kind !== undefined ? { ...item, kind: before.kind } : item;
export const allOf = (kinds: readonly Event[]): Unworded[] => kinds.map((each) => ({ fact: 'made', all: true, ...kindOf(each.kind) }));

/** "boutonnieres finished, all 22 of em": so many, and all of them. */
export const allOfThem = (
  events: readonly Event[],
  kinds: readonly Event[],
  next: number,
  start: number,
):
  | { readonly group: { readonly start: number; readonly end: number; readonly facts: readonly Unworded[] }; readonly next: number }
  | undefined => {
  const at = apart(events[next]) ? next + 1 : next;
  const item = events[at];
  const [kind, other] = kinds;
  if (other !== undefined || item?.told !== 'count' || item.all !== true || item.kind !== undefined || item.of !== undefined)
    return undefined;
  const behind = events[at + 1]?.told;
  if (behind !== undefined && !/^(done|join|stop|whole)$/.test(behind)) return undefined; // "all 6 broke"
  const last = behind === 'done' ? at + 1 : at;
  const fact: Unworded = { fact: 'made', count: item.count ?? 0, all: true, ...kindOf(kind?.kind) };
  return { group: { start, end: events[last]?.end ?? item.end, facts: [fact] }, next: last + 1 };
};
