// Home: the week's bench against its room, what is due today with tick buttons, and the open events, late ones first. Pure: data in, view out.

import type { types } from '@slack/bolt';
import { duration, fullDate, shortDate } from '../../reply/words/dates.ts';
import { limits, shortened } from './block-limits.ts';
import type { DueToday, EventOnHome, HomeData } from './desk.ts';
import { withoutControls } from './inert.ts';
import { placeUrl } from './place-url.ts';

export const homeIds = { page: 'home|page', setUp: 'home|set up', tick: 'home|tick' } as const;

const eventsOnPage = 20;
const mostDue = 25;
const longestName = 200;

/** `page` counts from 0 and is brought into range. `teamUrl`: the workspace's address, for links to threads. */
export const homeView = (data: HomeData, page: number, teamUrl: string): types.HomeView => ({
  type: 'home',
  blocks: [
    ...(data.isSetUp ? [] : [note('Prices and bench days use our own defaults until the studio is set up.'), setUp('Set up the studio')]),
    header('This week’s bench'),
    ...bench(data),
    header('Due today'),
    ...due(data.due),
    header('Open events'),
    ...events(data, page, teamUrl),
    ...(data.isSetUp ? [setUp('Studio settings')] : []),
  ],
});

/** Shown to guests and people of other organisations. */
export const homeForGuests: types.HomeView = {
  type: 'home',
  blocks: [
    { type: 'context', elements: [{ type: 'plain_text', text: 'The studio’s bench and events are for its members.', emoji: false }] },
  ],
};

const plain = (text: string, most: number): types.PlainTextElement => ({
  type: 'plain_text',
  text: shortened(withoutControls(text).trim() || '–', most),
  emoji: false,
});
const header = (text: string): types.HeaderBlock => ({ type: 'header', text: plain(text, 150) });
const note = (text: string): types.ContextBlock => ({ type: 'context', elements: [plain(text, limits.richTextCharacters)] });
const setUp = (label: string): types.ActionsBlock => ({
  type: 'actions',
  elements: [{ type: 'button', action_id: homeIds.setUp, text: plain(label, limits.buttonText) }],
});

const cells = 8;
const hours = (minutes: number): string => String(Math.round(minutes / 6) / 10);

/** Bars with their figures in words: 32 characters, a phone's width. */
const bench = ({ bench: days, dayFirst }: HomeData): types.KnownBlock[] => {
  if (days.length === 0) return [note('No bench days this week.')];
  const lines = days.map(({ day, planned, room }) => {
    const [weekday = '', first = '', second = ''] = shortDate(day, { dayFirst }).split(' ');
    const label = [weekday, first.slice(0, 3), second.slice(0, 3)].join(' ').padEnd(10);
    if (room === 0 && planned === 0) return `${label} closed`;
    const filled = room === 0 ? cells : Math.min(cells, Math.ceil((planned / room) * cells));
    return `${label} ${'█'.repeat(filled)}${'░'.repeat(cells - filled)} ${hours(planned)} of ${hours(room)} h`;
  });
  const over = days.filter(({ planned, room }) => planned > room);
  const text = `Too full: ${over.map(({ day, planned, room }) => `${shortDate(day, { dayFirst })} by ${duration(planned - room)}`).join(', ')}`;
  return [
    {
      type: 'rich_text',
      elements: [
        { type: 'rich_text_preformatted', elements: [{ type: 'text', text: lines.join('\n') }] },
        ...(over.length === 0
          ? []
          : [{ type: 'rich_text_section' as const, elements: [{ type: 'text' as const, text, style: { bold: true } }] }]),
      ],
    },
  ];
};

const due = (items: readonly DueToday[]): types.KnownBlock[] => {
  if (items.length === 0) return [note('Nothing is due today.')];
  const more = items.length - mostDue;
  return [...items.slice(0, mostDue).map(dueItem), ...(more > 0 ? [note(`and ${more} more: see their threads`)] : [])];
};

const dueItem = ({ event, what, tick }: DueToday, place: number): types.SectionBlock => {
  const value = tick && JSON.stringify([tick.in.channel, tick.in.thread, tick.value]);
  const text = plain(`${shortened(event, longestName)}: ${what}`, limits.textObject);
  if (tick === undefined || value === undefined || value.length > limits.buttonValue) return { type: 'section', text };
  const button: types.Button = { type: 'button', action_id: `${homeIds.tick}|${place}`, text: plain(tick.label, limits.buttonText), value };
  return { type: 'section', text, accessory: button };
};

/** Late first, then by date; those without a date last. */
const inOrder = (events: readonly EventOnHome[]): EventOnHome[] => {
  const rank = ({ late, date }: EventOnHome): string => `${late === undefined ? 1 : 0} ${date ?? '9999'}`;
  return [...events].sort((one, other) => (rank(one) < rank(other) ? -1 : rank(one) > rank(other) ? 1 : 0));
};

const events = (data: HomeData, page: number, teamUrl: string): types.KnownBlock[] => {
  const all = inOrder(data.events);
  if (all.length === 0) return [note('None yet. Mention me in a channel with what the client wants, and that thread becomes its event.')];
  const pages = Math.ceil(all.length / eventsOnPage);
  const shown = Math.min(Math.max(0, page), pages - 1);
  const from = shown * eventsOnPage;
  return [
    ...all.slice(from, from + eventsOnPage).map((event) => eventLine(event, data, teamUrl)),
    ...(pages === 1 ? [] : paging(shown, pages, all.length)),
  ];
};

const eventLine = (event: EventOnHome, { dayFirst }: HomeData, teamUrl: string): types.RichTextBlock => {
  const words = [event.date === undefined ? 'no date yet' : fullDate(event.date, { dayFirst }), event.pieces].filter((part) => part !== '');
  const title = shortened(withoutControls(event.title).trim() || 'Event', longestName);
  const elements: types.RichTextElement[] = [
    { type: 'link', url: placeUrl(event.in, teamUrl), text: title, style: { bold: true } },
    { type: 'text', text: ` · ${shortened(withoutControls(words.join(' · ')), limits.richTextCharacters)}` },
  ];
  if (event.late !== undefined)
    elements.push({ type: 'text', text: `\nLate: ${shortened(withoutControls(event.late), longestName)}`, style: { bold: true } });
  return { type: 'rich_text', elements: [{ type: 'rich_text_section', elements }] };
};

const paging = (shown: number, pages: number, all: number): types.KnownBlock[] => {
  const to = (page: number, label: string): types.Button[] =>
    page < 0 || page >= pages
      ? []
      : [{ type: 'button', action_id: `${homeIds.page}|${page}`, text: plain(label, limits.buttonText), value: String(page) }];
  return [
    note(`Page ${shown + 1} of ${pages}, ${all} events`),
    { type: 'actions', elements: [...to(shown - 1, 'Earlier'), ...to(shown + 1, 'More')] },
  ];
};
