// Words put in that ask nothing and tell nothing of the order: "Anzac Day wedding believe it or not, all silk", "like it or not it's 40 bouts".

import { formOf } from '../pattern.ts';
import type { Token } from './token.ts';

const aside = formOf(
  '(-|\\()? ((would you|wld you|would u|if you can|if u can|if you|can you) believe (it)? (or not)?|(believe|beleive|belive) (it|me) or not|(like|love|want) it or not|(love|like) it or (hate|loathe|lump) it|(strange|odd|weird|funny) as it (sounds|seems)) (-|\\)|!)?',
);
// "about 18 each but please tell me if that is silly": a client's doubt about what was just told, and no question of ours.
const doubtful =
  '(silly|daft|mad|crazy|unrealistic|unreasonable|ridiculous|stupid|cheeky|bonkers|nonsense|optimistic|insulting|way off|way out|miles off|not realistic|not reasonable|laughable|rude|a joke)';
const doubt = formOf(
  `(,|-|\\()? (but|and|so|though)? (please|pls|do|just|feel free to|you can){0,2} ((tell|correct|stop) (me|us)|let (me|us) know|say|say so|shout) (please|pls)? (if|whether) (that|this|it|that's|thats|it's|its|i'm|im|i) (is|am|sounds|seems|being|was)? (a bit|completely|totally|just|too|way|really|being|far too|utterly)? ${doubtful} (please|pls|thanks|though|or not)? (\\))?`,
);
// "two of the lapels are corsages now, nan changed her mind": why it is so, and nothing else that changes.
const otherMind = formOf(
  "(,|-|\\(|;|as|cos|coz|because|since|cause){1,2} <word>{1,3} (has|have|had|'s|just|only|gone and){0,2} changed (her|his|their|my|our) (mind|minds) (again|on that|about it|about that|now|sorry)? (\\))?",
);
// "bin the crown, she's wearing a veil": why, and nothing we make.
const wornInstead = formOf(
  "(,|-|\\(|;|as|cos|coz|because|since){1,2} (the)? (she|she's|shes|he's|hes|they're|theyre|bride|bride's|mum's) (is|has|having|wearing|got|going for|going with|decided on|gone for){1,2} (a|her|his|the|their|an) (veil|hat|fascinator|tiara|headband|turban|cap|hood|headpiece|hatinator) (instead|now|after all)? (\\))?",
);
// "sat 13 march, not sure what time yet": nobody is asked.
const leftOpen = formOf(
  "(,|-|\\(|;|\\.|but|and){1,2} (the)? (client|bride|groom|couple|planner|they|she|he|we|i|i'm|im|they're|theyre|she's|shes|they've|theyve|mum|mob)? (is|are|am|has|have|still|just){0,2} (not (sure|certain|decided|said|told me|told us)|unsure|undecided|hasn't (said|decided|told (me|us)|confirmed)|hasnt (said|decided|told (me|us)|confirmed)|haven't (said|decided|told (me|us)|confirmed)|havent (said|decided|told (me|us)|confirmed)|doesn't know|doesnt know|don't know|dont know|didn't say|didnt say|no idea|yet to (say|decide|confirm)) (on|about|of)? (yet)? (what|which) (day|time|date|hour|one|of the two|of them) (yet|it is|exactly|tho|though|of the two|sorry|will confirm|tbc){0,2} (\\))?",
);
// "bouts 10-12 not sure yet, $14 each": of a number with two ends that says no more.
const unsure = formOf(
  '(\\()? (tbc|tbd|not sure yet|not certain yet|not confirmed yet|not confirmed|to be confirmed|still to confirm|not final yet|provisional) (\\))? (,|-|;)',
);
const hint = new Set('believe beleive belive like love want strange odd weird funny'.split(' '));
const second = /^(it|me|or|as)$/;
// "can you believe she wants 40?" tells what is behind it with a mark of its own, and stays as it is.
const marked = (tokens: readonly Token[]): boolean => tokens.some(({ text }) => text === '?');

// Behind what it is the reason of; "the bride changed her mind, 45" leads to it.
const remark = (tokens: readonly Token[], index: number, before: number): ReturnType<typeof otherMind.at> => {
  if (/^(-|or|to)$/.test(tokens[index - 2]?.text ?? '') && tokens[index - 1]?.number !== undefined) {
    const open = unsure.at(tokens, index, tokens.length);
    if (open !== undefined) return { ...open, end: open.end - 1 };
  }
  const match =
    before > 2
      ? (otherMind.at(tokens, index, tokens.length) ??
        leftOpen.at(tokens, index, tokens.length) ??
        wornInstead.at(tokens, index, tokens.length))
      : undefined;
  const next = tokens[match?.end ?? 0];
  return match !== undefined && (next === undefined || next.kind === 'line' || /^[.!]$/.test(next.text)) ? match : undefined;
};

/** The tokens without such words. */
export const withoutAsides = (tokens: readonly Token[]): readonly Token[] => {
  const likely = tokens.some(
    ({ text }, at) =>
      (hint.has(text) && (/^bel/.test(text) || second.test(tokens[at + 1]?.text ?? ''))) ||
      (/^(if|whether)$/.test(text) && at > 3) ||
      (/^(minds?|what|which|tbc|tbd|sure|certain|confirmed|confirm|final|provisional|veil|hat|tiara|fascinator|headband)$/.test(text) &&
        at > 2),
  );
  if (!likely || marked(tokens)) return tokens;
  const kept: Token[] = [];
  for (let index = 0; index < tokens.length; index++) {
    const match =
      aside.at(tokens, index, tokens.length) ??
      (kept.length > 3 ? doubt.at(tokens, index, tokens.length) : undefined) ??
      remark(tokens, index, kept.length);
    if (match === undefined) {
      kept.push(tokens[index] as Token);
      continue;
    }
    index = match.end - 1;
    // "wedding, believe it or not, all silk": one comma is left of the two.
    if (tokens[match.end]?.text === ',' && (kept.at(-1)?.text === ',' || kept.length === 0)) index += 1;
  }
  return kept.length === 0 ? tokens : kept;
};
