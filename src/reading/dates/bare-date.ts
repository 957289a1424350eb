// A message that says a day and hardly anything else: "sat week, dried again", "some time in september, not locked in yet".

import { type Match, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { fillers } from './date-words.ts';
import { saysDayToCome } from './day-to-come.ts';

const unsettled = /^(locked|confirmed|sure|booked|set|fixed|decided|final|certain|definite|settled|in|yet)$/;
// "dried again", "silk as usual", "fresh this time"
const asBefore = pattern(
  '<material> (again|anyway|anyhow|too|likewise|instead|as (before|usual|always|ever|last time|per usual)|like (before|last time)|same as (before|last time|usual))',
);

// "this coming sunday 10.30am at the marae": where people marry or are buried.
const kinds =
  '((<unlisted>|st|saint){0,2} (barn|boatshed|boat shed|boathouse|boat house|woolshed|wool shed|hall|town hall|village hall|manor|gardens|botanic gardens|beach|estate|castle|homestead|orangery|pavilion|marquee|lighthouse|mill|marae|church|chapel|cathedral|abbey|minster|kirk|temple|mandir|gurdwara|mosque|masjid|synagogue|shul|registry|registry office|vineyard|winery|crematorium|basilica|roof garden|roof terrace|rooftop|terrace|walled garden|rose garden|secret garden|conservatory|glasshouse|ballroom|function room|courtyard|golf club|yacht club|surf club|sailing club|rowing club|country club)|(st|saint) <unlisted>)';
const venue = pattern(`(,|at|in|@|out|up|down|over){1,3} (the|our|their|her|his|an|a|old)? ${kinds}`);
// "tuesday week, 2 o'clock church", "old barn, sat week": with no word between, where a day so far ahead is said.
const venueAlone = pattern(`(the|our|old)? ${kinds}`);

/** Whether nothing but days, hours, a material and small words is said. */
export const isBareDate = (reader: Reader, spoken: readonly { readonly start: number; readonly end: number }[]): boolean => {
  const { tokens } = reader;
  const again = asBefore.in(tokens, 0, tokens.length);
  // "sunday week at the boatshed": a day so far ahead is no outing
  const ahead = spoken.some(({ start, end }) => tokens.slice(start, end).some(({ text }) => /\b(week|fortnight|next)$/.test(text)));
  const hour = ahead || tokens.some(({ number }) => number?.form === 'time');
  const alone = (from: number): Match | undefined => (ahead ? venueAlone.at(tokens, from, tokens.length) : undefined);
  const place =
    (hour ? venue.in(tokens, 0, tokens.length) : undefined) ??
    alone(0) ??
    spoken.map(({ end }) => alone(end)).find((match) => match !== undefined);
  const placed =
    place !== undefined &&
    (place.end === tokens.length || /^[,.]$/.test(tokens[place.end]?.text ?? '') || spoken.some(({ start }) => start === place.end))
      ? place
      : undefined;
  const later = saysDayToCome(tokens);
  return tokens.every((token, index) => {
    if (later !== undefined && later.start <= index && index < later.end) return true;
    if (token.kind === 'line' || !reader.free(index) || spoken.some((read) => read.start <= index && index < read.end)) return true;
    return (
      fillers.has(token.text) ||
      (token.text === 'not' && unsettled.test(tokens[index + 1]?.text ?? '')) ||
      unsettled.test(token.text) ||
      token.text === "'" ||
      token.means['material'] !== undefined ||
      token.means['weekday'] !== undefined ||
      token.number?.form === 'time' ||
      (again !== undefined && again.start <= index && index < again.end) ||
      (placed !== undefined && placed.start <= index && index < placed.end)
    );
  });
};
