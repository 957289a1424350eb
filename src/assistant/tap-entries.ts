// What was picked or typed with a button, as the facts a person would have written: a day to move to, a count made, a price.
// The value is two lines: what the button stands for (a kind of piece, or nothing), then the entry.

import { type PieceKind, pieceKinds } from '../handbook/pieces.ts';
import type { Fact } from '../reading/fact.ts';
import type { Reading } from '../reading/reading.ts';
import { type Day, parseDay } from '../values/day.ts';
import { problem } from '../values/result.ts';

const nothing: Reading = { facts: [], unread: [], asks: [], problems: [] };
const stating = (fact: Fact): Reading => ({ ...nothing, facts: [fact] });

/** undefined for a button that carries no entry, or stands for something else. An entry that cannot stand, such as a day long past, is refused as if it had been typed. */
export const entryReading = (tap: { readonly action: string; readonly value: string }, today: Day): Reading | undefined => {
  const [about = '', entry = ''] = tap.value.split('\n');
  const kind = pieceKinds.find((known): known is PieceKind => known === about);
  if (about !== '' && !kind) return undefined; // a tick of a list, with a value of its own
  const piece = kind ? { piece: kind } : {};
  switch (tap.action) {
    case 'move date': {
      const day = parseDay(entry);
      if (!day) return nothing;
      if (day < today) return { ...nothing, problems: [problem('date-is-past', { date: entry })] };
      return stating({ fact: 'change', what: 'date', to: day, words: entry });
    }
    case 'made some':
      return /^[1-9]\d{0,5}$/.test(entry) ? stating({ fact: 'made', count: Number(entry), ...piece, words: `made ${entry}` }) : nothing;
    case 'set price':
      return /^\d{1,7}(\.\d{1,4})?$/.test(entry)
        ? stating({ fact: 'change', what: 'price', to: entry, per: 'each', ...piece, words: `${entry} each` })
        : nothing;
    default:
      return undefined;
  }
};
