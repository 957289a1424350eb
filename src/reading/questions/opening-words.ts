// Words a question opens with, and words that may stand before them.

import { wordList } from '../words/word-list.ts';

export const openers = new Set(
  wordList(`
  what, what's, wot's, whats, how, how's, hows, when, when's, whens, where, where's, wheres, who, who's, whos, whose,
  what'd, whatd, what'll, how'd, how'll, which, why, why's, whys, do, does, did, are, is, can, could, should, would, will, shall, have, has, was,
  were, am, isnt, isn't, arent, aren't,
  anyone, anybody, any, anything, whatre, suppose, supposing, didnt, didn't, wouldnt, wouldn't, cant, what're, may
`),
);
export const leadIns = new Set([
  ...wordList(`
  so, hey, and, ok, okay, also, sorry, btw, hi, hello, just, but, then, oh, um, er, eh, right, quick, q, question, please,
  pls, remind, tell, me, us, again, now, yo, guys, team, folks, lads, bot, can, you, anyone, someone, somebody, anybody,
  could, know, do, we, morning, wait, actually, ah, hang, on, one, more, thing, wondering, i'm, say, to, check, checking,
  confirm, hmm, well, any, idea, not, sure, chance, love, mate, boss, cuz, bhai, ji, forgot, n
`),
  ',',
  '-',
  ':',
  '"',
  '&',
]);
