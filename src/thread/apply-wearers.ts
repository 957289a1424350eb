// Who wears the pieces. A wearer said again has the new count; counts are compared with the order elsewhere, never forced to agree.

import type { FactOf } from '../reading/fact.ts';
import type { EventState } from './event.ts';

type Wearer = EventState['wearers'][number];

/** "Fathers of the bride" and "father of the bride" are the same wearers. */
const singular = (word: string): string => {
  if (/(^|m|wom)en$/.test(word)) return word.replace(/en$/, 'an');
  if (word === 'children') return 'child';
  if (/sses$/.test(word)) return word.slice(0, -2);
  return word.length > 3 && /[^s]s$/.test(word) ? word.slice(0, -1) : word;
};

/** A role as it is told apart: the same however it is written. */
export const roleOf = (wearer: string): string => wearer.trim().toLowerCase().split(/\s+/).map(singular).join(' ');

/** Said again without its piece, its note or its names, a wearer keeps the ones it had. With more names than people it is asked who they are. */
const again = (wearer: Wearer, before: readonly Wearer[]): Wearer => {
  const like = before.filter((one) => roleOf(one.wearer) === roleOf(wearer.wearer));
  const [old, another] = like;
  if (old === undefined) return wearer;
  const known = like.flatMap(({ names = [] }) => names);
  const { names = known, ...told } = wearer;
  const named = names.length === 0 || wearer.count === 0 ? told : { ...told, names };
  if (another !== undefined) return named;
  const { piece = old.piece, note = old.note, ...rest } = named;
  return { ...rest, ...(piece === undefined ? {} : { piece }), ...(note === undefined ? {} : { note }) };
};

/** The number of people somebody said ("so 9"): a total that is not simply the list counted up. */
const saidTotal = ({ wearers, total }: FactOf<'wearers'>): number | undefined => {
  const listed = wearers.reduce((count, wearer) => count + wearer.count, 0);
  return total !== undefined && total > 0 && total !== listed ? total : undefined;
};

/** A care said of a wearer joins what was noted before; who is not on the list yet is put there. */
const applyNotes = (state: EventState, said: readonly Wearer[]): EventState => {
  const roles = new Set(state.wearers.map(({ wearer }) => roleOf(wearer)));
  const noted = state.wearers.map((wearer): Wearer => {
    const notes = said.flatMap((one) => (roleOf(one.wearer) === roleOf(wearer.wearer) && one.note !== undefined ? [one.note] : []));
    const all = [...new Set([...(wearer.note === undefined ? [] : [wearer.note]), ...notes])];
    return all.length === 0 ? wearer : { ...wearer, note: all.join('; ') };
  });
  return { ...state, wearers: [...noted, ...said.filter((one) => !roles.has(roleOf(one.wearer)))] };
};

export const applyWearers = (state: EventState, fact: FactOf<'wearers'>): EventState => {
  if (fact.notes) return applyNotes(state, fact.wearers);
  const now = fact.wearers.map((wearer) => again(wearer, state.wearers));
  const roles = new Set(now.map(({ wearer }) => roleOf(wearer)));
  const total = saidTotal(fact);
  const { wearersRoughly: _, ...before } = state;
  return {
    ...(total === undefined ? state : before),
    wearers: [...state.wearers.filter((wearer) => !roles.has(roleOf(wearer.wearer))), ...now],
    ...(total === undefined ? {} : { wearersSaid: total, ...(fact.approx ? { wearersRoughly: true } : {}) }),
  };
};
