// What a message, an edit or a tapped button says, given the thread it stands in. A tapped choice states the facts it was offered with.

import { matchIngredient } from '../handbook/ingredient-names.ts';
import type { Fact } from '../reading/fact.ts';
import { readMessage } from '../reading/read-message.ts';
import type { OpenQuestion, Reading, ReadingContext } from '../reading/reading.ts';
import { dayFirst } from '../studio/defaults.ts';
import type { StudioState } from '../studio/studio.ts';
import type { EventState } from '../thread/event.ts';
import type { Day } from '../values/day.ts';
import { problem } from '../values/result.ts';
import { isPriceList, priceListReading } from './import-prices.ts';
import type { IncomingMessage } from './ports.ts';
import { entryReading } from './tap-entries.ts';
import { tapFacts } from './tap-facts.ts';
import { tickReading } from './ticks.ts';

/** Longer than any message a person types at a bench; a pasted price list goes in as a file. */
export const mostCharacters = 8000;

const day = 24 * 60 * 60 * 1000;

/** The question still open: it lapses a day after it was asked. */
export const openQuestion = (state: EventState, now: number): OpenQuestion | undefined =>
  state.open && now - state.open.askedAt < day ? state.open : undefined;

export const readingOf = (message: IncomingMessage, state: EventState, studio: StudioState, today: Day, now: number): Reading => {
  const open = openQuestion(state, now);
  if (message.kind === 'tap') {
    const tapped = message.tap && (tickReading(message.tap, state, today) ?? entryReading(message.tap, today));
    return tapped ?? { ...stating(tapFacts(message.tap, open)), ...(message.tap?.action === 'choose' ? { answersOpen: true } : {}) };
  }
  if (message.unreadable) return { ...stating([]), problems: [problem('file-unreadable', { why: message.unreadable })] };
  if (message.kind === 'file') return priceListReading(message.text, studio.settings.currency);
  const characters = message.text.length;
  if (characters > mostCharacters) {
    return { ...stating([]), problems: [problem('message-too-long', { characters, most: mostCharacters })] };
  }
  if (isPriceList(message)) return priceListReading(message.text, studio.settings.currency);
  return readMessage(message.text, readingContext(state, studio, today, open));
};

const stating = (facts: readonly Fact[]): Reading => ({ facts, unread: [], asks: [], problems: [] });

const readingContext = (state: EventState, studio: StudioState, today: Day, open: OpenQuestion | undefined): ReadingContext => ({
  today,
  dayFirst: dayFirst(studio.settings),
  currency: studio.settings.currency,
  region: studio.settings.region,
  open,
  pieces: [...new Set(state.lines.map((line) => line.piece))],
  wearers: state.wearers.flatMap(({ wearer, count }) => (count > 0 ? [wearer] : [])),
  eventDate: state.date,
  items: itemsOf(studio),
  ...goodsOf(state, studio),
});

/** What the recipes take, and what of it nobody has priced. */
const goodsOf = ({ recipes }: EventState, studio: StudioState): Pick<ReadingContext, 'inRecipe' | 'unpriced'> => {
  const inRecipe = [...new Set(Object.values(recipes).flatMap((lines) => lines?.map(({ ingredient }) => ingredient) ?? []))];
  if (inRecipe.length === 0) return {};
  const listed = itemsOf(studio);
  return { inRecipe, unpriced: inRecipe.filter((name) => matchIngredient(name, listed).match === 'none') };
};

const named = new WeakMap<StudioState['packs'], readonly string[]>();

/** The same list while the price list is the same: the words in it are sorted once. */
const itemsOf = ({ packs }: StudioState): readonly string[] => {
  const known = named.get(packs) ?? packs.map((pack) => pack.item);
  named.set(packs, known);
  return known;
};
