// The parts a list of goods may be read from: those nobody has touched, and what stands behind held talk that opens one, "van's here, roses £6 a bunch".

import type { Reader } from './phrase.ts';
import type { Part } from './text/message.ts';

const between = /^(,|-|:|;|but|and|so)$/;

/** What is free of a part behind its opening, where that was taken by others and goods are named there. */
const behindOpening = (reader: Reader, part: Part): readonly Part[] => {
  let at = part.start;
  while (at < part.end && !reader.free(at)) at += 1;
  if (at === part.start || at >= part.end) return [];
  // "van hire £60, roses £1 a stem": the number before may have more to it.
  if (reader.tokens.slice(part.start, at).some(({ number }) => number !== undefined)) return [];
  const mark = at;
  while (at < part.end && between.test(reader.tokens[at]?.text ?? '')) at += 1;
  const goods = reader.tokens.slice(at, part.end).some(({ means }) => means['ingredient'] !== undefined);
  for (let index = at; index < part.end; index++) if (!reader.free(index)) return [];
  return at > mark && goods ? [{ ...part, start: at }] : [];
};

/** In the order of the message. */
export const openParts = (reader: Reader): readonly Part[] => {
  const whole = new Set(reader.untouched());
  return reader.message.parts.flatMap((part) => (whole.has(part) ? [part] : behindOpening(reader, part)));
};
