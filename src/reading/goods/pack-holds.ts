// The answer to “How many are in a bunch?”: "10", "its 10 a bunch", "they come in 12s", "25m on a roll".

import type { Fact } from '../fact.ts';
import { pattern } from '../pattern.ts';
import type { OpenQuestion } from '../reading.ts';
import type { Message } from '../text/message.ts';

const lead =
  "(oh|ok|so|um|sorry|think|i think|about|it's|its|it is|it|they're|theyre|they are|they|there's|theres|there are|there is|comes|come|is|are|has|have|holds|usually|normally|bunches|bunch|packs|pack|in|of|a|the|each|wraps|wrap|boxes|box|rolls|roll|spools|spool|reels|reel){0,6}";
const behind =
  "('s|s|stems|stem|heads|pins|pcs|pieces|of them|in it)? ((in|to|per|a|an|on|/) (a|the|each|it|one)? (<k:pack>)?)? (please|pls|thanks|i think|usually|stems|stem|x){0,2}";
const forms = [pattern(`${lead} <n:count> ${behind}`), pattern(`${lead} <m:length> ${behind}`)];

export const packHolds = ({ tokens, clean }: Message, { item, per }: Extract<OpenQuestion, { kind: 'pack' }>): Fact | undefined => {
  const words = clean.original.trim();
  const held = (size: string, unit?: string, pack = per): Fact => ({
    fact: 'packed',
    item,
    size: Number(size),
    ...(unit === undefined ? {} : { unit }),
    ...(pack === undefined ? {} : { per: pack }),
    words,
  });
  for (const form of forms) {
    const match = form.at(tokens, 0, tokens.length);
    const number = (match?.kept['n'] ?? match?.kept['m'])?.number;
    if (match?.end !== tokens.length || number === undefined || number.max !== undefined || Number(number.amount) < 1) continue;
    const pack = match.kept['k']?.means['pack'];
    return held(number.amount, number.unit, pack === 'stem' ? per : (pack ?? per));
  }
  return undefined;
};
