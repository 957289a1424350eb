// Hands named first and counted behind: "casuals on $31.50 an hr, 4 of em saturday", "freelancers £15/hr, both of them fri", "temps 14 ph, x3 on friday".

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';
import { dateIn } from './days-at-bench.ts';

const them = "(')? (them|em|those|these)";
const ofThose = pattern(`(<n:count>|both|one) of ${them}`);
const hired =
  /^(staff|karigars|helpers|workers|freelancers|casuals|florists|juniors|seniors|apprentices|assistants|temps|trainees|designers|volunteers|makers)$/;
const paid = /^(students|girls|lads|boys|ladies|women|kids|extras|mums|neighbours)$/; // beside a wage alone: "pin corsages for the ladies, all 25 of them"
const counted = pattern('(<count>|a|an|one|both|another) (extra|more|other|good|new)? <bench>');
// Beside a wage a bare number and a day will do: "casuals at 28 an hr, 4 on saturday".
const onDay = pattern(
  "(,|x|-|and|with) (got|have|we have|we've got|there's|there are|only|just|all|about)? <n:count> (in|on|for|of us)? (this|next)? (<weekday>|tomorrow|today)",
);
const unsure =
  /^(maybe|or|possibly|perhaps|need|needs|want|wants|off|late|away|sick|ill|out|can't|cant|not|isn't|aren't|minus|less|short|left|quit|cancelled|at|on|@|is|are)$/;
const mostHands = 12;
const mostByDay = 8; // "casuals at 28 an hr, 12 on friday": hands or pieces

/** How many of them; NaN where others are counted too, or the number may be another's. */
export const ofThem = (reader: Reader, part: Part, wage: boolean): number | undefined => {
  const { tokens } = reader;
  const { start, end } = part;
  if (!ofThose.might(tokens) && !(wage && onDay.might(tokens))) return undefined;
  const match = ofThose.in(tokens, start, end) ?? (wage ? onDay.in(tokens, start, end) : undefined);
  if (match === undefined || !tokens.slice(start, end).some(({ text }) => hired.test(text) || (wage && paid.test(text)))) return undefined;
  // "12 an hour casuals, 4 of em for saturday": whose the twelve is was not read.
  if (!wage && tokens.slice(start, end).some(({ text }) => /^(hour|hr|ph|hourly)$/.test(text))) return Number.NaN;
  const own = ofThose.at(tokens, match.start, end) !== undefined;
  const pool = counted.in(tokens, start, end);
  if (!own && pool !== undefined) return undefined;
  const { n } = match.kept;
  const people = n === undefined ? (tokens[match.start]?.text === 'both' ? 2 : 1) : Number(n.number?.amount);
  const again = ofThose.in(tokens, match.end, end) ?? onDay.in(tokens, match.end, end);
  const [before, next] = [tokens[match.start - 1], match.end < end ? tokens[match.end] : undefined];
  if (again !== undefined || isRangeOrChoice(n?.number) || people > (own ? mostHands : mostByDay)) return Number.NaN;
  if (own && (unsure.test(match.start > start ? (before?.text ?? '') : '') || unsure.test(next?.text ?? ''))) {
    // "4 of em at 28 an hr", "4 of em are in sat"
    const plain =
      /^(at|on|@|is|are)$/.test(next?.text ?? '') && !unsure.test(tokens[match.end + 1]?.text ?? '') && !unsure.test(before?.text ?? '');
    if (!plain) return Number.NaN;
  }
  if (pool === undefined) return people;
  // "4 casuals, 2 of em sat": of those hired two are there; "4 casuals sat, 2 of em for 3 hrs" has two more.
  const day = dateIn(reader, { ...part, start: match.start });
  return day !== undefined && dateIn(reader, { ...part, end: match.start }) === undefined ? people : Number.NaN;
};
