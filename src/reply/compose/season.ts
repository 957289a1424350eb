// A season at a glance: one row an event that can be looked back on, their sums, and the same as a file for a spreadsheet.

import { usualSpare } from '../../buying/buy-for-events.ts';
import { soMany } from '../../reading/words/kind-words.ts';
import { type Season, type SeasonRow, seasonOf } from '../../review/season.ts';
import type { Decimal } from '../../values/decimal.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { dateSpan, joined, moneySpan, ownWords, plainLine, strong, text } from '../span.ts';
import { shortDate } from '../words/dates.ts';
import { percent } from '../words/percent.ts';

const mostRows = 20;
const mostLeftOut = 6;

type SeasonParts = Pick<Answer, 'pastEvents' | 'studio' | 'today'>;

export const seasonFor = ({ pastEvents, studio, today }: SeasonParts): Season => {
  const events = pastEvents();
  return seasonOf(
    events.map(({ key, title, state }) => ({ key, event: { ...state, title } })),
    studio,
    today,
    { usualSpare: usualSpare(events.map(({ state }) => state)) },
  );
};

export const seasonBlocks = (answer: Answer): readonly Block[] => {
  const { manner } = answer;
  const season = seasonFor(answer);
  const { rows } = season;
  if (rows.length === 0) {
    return [
      {
        block: 'answer',
        line: text`No event has been looked back on yet. In its thread, once it is over, say “spent 182.40” or “took 9 hours”.`,
      },
      ...leftOutBlocks(season),
    ];
  }
  const shown = rows.slice(-mostRows);
  return [
    { block: 'answer', line: answerLine(season, manner) },
    table(shown, season, manner),
    ...(rows.length > shown.length
      ? [{ block: 'line' as const, line: text`The latest ${shown.length} of ${rows.length}; the file has them all.` }]
      : []),
    ...leftOutBlocks(season),
    {
      block: 'file',
      file: {
        kind: 'season',
        name: 'season.csv',
        alt: `The season above as a table for a spreadsheet, with labour and minutes: ${rows.length === 1 ? '1 event' : `${rows.length} events`}.`,
      },
    },
  ];
};

const marginOf = ({ afterLabour, afterGoods }: Pick<Season, 'afterLabour' | 'afterGoods'>): Line => {
  const rate = afterLabour.margin.actual ?? afterGoods.margin.actual;
  return plainLine(rate === undefined ? '–' : percent(rate));
};

const answerLine = ({ rows, pieces, wholesale, afterGoods, afterLabour }: Season, manner: Manner): Line => {
  const events = text`${strong(rows.length === 1 ? '1 event' : `${rows.length} events`)}, ${soMany(pieces)}`;
  const spent =
    wholesale.actual === undefined || wholesale.planned === undefined
      ? []
      : text`: ${moneySpan(manner.money(wholesale.actual))} on stems and sundries, ${moneySpan(manner.money(wholesale.planned))} planned`;
  const whole = afterLabour.margin.actual;
  const rate = whole ?? afterGoods.margin.actual;
  const margin =
    rate === undefined
      ? []
      : text`; ${strong(percent(rate))} of the price before tax was left${whole === undefined ? ' before labour' : ''}`;
  return text`${events}${spent}${margin}.`;
};

const table = (rows: readonly SeasonRow[], season: Season, manner: Manner): Block => {
  const money = (amount: Decimal | undefined): Line => (amount === undefined ? plainLine('–') : [moneySpan(manner.money(amount))]);
  return {
    block: 'table',
    caption: 'The season: wholesale planned and real, and the margin left of the price before tax',
    columns: [
      { title: 'event', align: 'left' },
      { title: 'planned', align: 'right' },
      { title: 'really', align: 'right' },
      { title: 'margin', align: 'right' },
    ],
    rows: [
      ...rows.map(({ title, date, review }): readonly Line[] => [
        date
          ? text`${ownWords(title ?? '')}${title?.includes(shortDate(date, manner)) ? [] : text`, ${dateSpan(shortDate(date, manner))}`}`
          : text`${ownWords(title ?? '')}`,
        money(review.printed.all.wholesale.planned),
        money(review.printed.all.wholesale.actual),
        marginOf(review),
      ]),
      ...(rows.length > 1
        ? [[text`${strong('all')}`, money(season.wholesale.planned), money(season.wholesale.actual), marginOf(season)]]
        : []),
    ],
  };
};

const why: { readonly [reason: string]: string } = {
  'review-before-event': 'still to come',
  'nothing-recorded': 'nothing told',
  cancelled: 'cancelled',
};

const leftOutBlocks = ({ leftOut }: Season): readonly Block[] => {
  if (leftOut.length === 0) return [];
  const named = leftOut
    .slice(0, mostLeftOut)
    .map(({ title, why: reason }) => text`${ownWords(title ?? 'an event')} (${why[reason] ?? 'cannot be worked out'})`);
  const more = leftOut.length > named.length ? ` and ${leftOut.length - named.length} more` : '';
  return [{ block: 'assumed', line: text`Not in it: ${joined(named, ', ')}${more}.` }];
};
