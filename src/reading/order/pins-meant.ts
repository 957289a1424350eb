// "corsages for the two mums (pins, not wrist)": how corsages are worn, told behind them.

import { pattern } from '../pattern.ts';
import { isEnd } from '../text/sentence-end.ts';
import type { Token } from '../text/token.ts';
import type { Mention } from './mention.ts';

const pins = pattern(
  "(\\(|,|-|all|both|they're){0,2} (pin|pins|pinned|pin ons|pin - ons|pin-ons) (ones|please|pls)? (,|-)? (\\)|(and)? not (on the|the|on)? (wrist|wrists) (ones|please|pls)?)",
);
const reach = 18;

/** The mentions, with corsages that are said to be pinned told as such. */
export const withPinsMeant = (tokens: readonly Token[], mentions: readonly Mention[]): Mention[] =>
  mentions.map((mention, at) => {
    if (mention.kind !== 'corsage') return mention;
    const end = Math.min(mentions[at + 1]?.start ?? tokens.length, mention.last + reach);
    for (let index = mention.last + 1; index < end && !isEnd(tokens, index); index++) {
      const match = pins.at(tokens, index, tokens.length);
      // Right behind the name the words go with it.
      if (match !== undefined) return { ...mention, kind: 'pin corsage', end: index <= mention.end ? match.end : mention.end };
    }
    return mention;
  });
