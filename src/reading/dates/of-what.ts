// What a day is of, where it is not the event's own: the hand-over or the photos.

import type { FactOf } from '../fact.ts';
import type { Reader } from '../phrase.ts';
import { withoutOwner } from '../text/owners.ts';
import type { DateRead } from './date-read.ts';
import { leads } from './leads.ts';

const between = /^(is|at|on|by|for|the|now|will|be|from|this|next|moved|changed|been|has|to|them|it|these|everything)$/;

// "pick up for the bride is friday 4pm", "delivery for the wedding is sat 10am": whose it is.
const isFor = ({ tokens }: Reader, index: number): boolean => {
  if (!/^(is|will|now|'s)$/.test(tokens[index + 1]?.text ?? '')) return false;
  // "collection for the lodge do is thurs 4 march"
  return [1, 2, 3].some(
    (by) => /^(for|to)$/.test(tokens[index - by]?.text ?? '') && tokens.slice(index - by + 1, index).every(({ kind }) => kind === 'word'),
  );
};

export const ofWhat = (reader: Reader, read: DateRead): FactOf<'date'>['of'] => {
  let forIt = false;
  for (let index = read.start - 1, steps = 0; index >= 0 && steps < 3; index--) {
    const text = withoutOwner(reader.tokens[index]?.text ?? '');
    // "collecting fri for a sat wedding": what stands before "for" has a day of its own.
    forIt ||= text === 'for';
    if (forIt && (reader.tokens[index]?.means['weekday'] !== undefined || reader.tokens[index]?.number?.form === 'ordinal'))
      return undefined;
    // "pickup is at 8am on sat"
    if (!between.test(text) && reader.tokens[index]?.number?.form !== 'time') steps += 1;
    if (/^(photos|shoot|photo)$/.test(text)) return 'photos';
    if (
      /^(handover|pickup|collection|collect|collects|collected|collecting|delivery|deliver|delivers|delivering|delivered)$/.test(text) ||
      (text === 'up' && /^(pick|picks|picking)$/.test(reader.tokens[index - 1]?.text ?? '')) ||
      (text === 'off' && /^(drop|drops|dropping)$/.test(reader.tokens[index - 1]?.text ?? '')) ||
      (text === 'over' && /^(hand|hands|handing)$/.test(reader.tokens[index - 1]?.text ?? ''))
    )
      return 'hand over';
    if (leads.has(text) && !isFor(reader, index)) return undefined;
  }
  return undefined;
};
