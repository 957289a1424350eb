// Apostrophes nobody typed: "weddings 14 march", "brides brother", "were not vat registered", "what days the wedding", "everythings made".

import { isOccasion } from '../words/occasion-words.ts';
import { roles } from '../words/people-words.ts';
import { changed, type Token } from './token.ts';

const thing = /^(date|dinner|lunch|do|ball|handover|pickup|delivery|job|price)s$/;
const occasion = (text: string): boolean => thing.test(text) || (text.endsWith('s') && isOccasion(text.slice(0, -1)) && !isOccasion(text));
const tellsOf =
  /^(the|a|an|on|in|at|now|been|moved|this|next|not|wrong|off|incorrect|tomorrow|tmrw|confirmed|changed|(mon|tues?|wed|weds|thu|thur|thurs|fri|sat|sun)(day|nesday|rsday|sday|urday)?|(jan|feb|mar|apr|jun|jul|aug|sep|sept|oct|nov|dec)[a-z]*|may)$/;
const kin =
  /^(brother|brothers|sister|sisters|uncle|uncles|aunt|aunts|auntie|aunties|aunty|nan|nans|nana|gran|grans|granny|grandad|granddad|grandpa|grandfather|grandma|grandmother|grandparents|cousin|cousins|nephew|nephews|niece|nieces|son|sons|daughter|daughters|stepdad|stepmum|stepmom|family|one|friend|friends)$/;

const shortIs = new Set(["many's", 'manys', "much's", 'muchs']);

const opensPart = (before: Token | undefined): boolean =>
  before === undefined || before.kind === 'line' || /^([,.;:!?-]|so|and|but|ok|the|hi|sorry|oh|oops|actually)$/.test(before.text);

const whose = /^(the|his|her|their|my|our|a|an|also)$/;
const restored = (tokens: readonly Token[], index: number): string | undefined => {
  const [before, token, next] = [tokens[index - 1], tokens[index], tokens[index + 1]];
  const text = token?.text ?? '';
  if (next === undefined || token?.kind !== 'word') return undefined;
  if (text === 'were' && opensPart(before) && /^(not|vat|gst|registered|charging|half|nearly|almost|closed)$/.test(next.text))
    return "we're";
  if (text === 'everythings') return "everything's";
  // "one of thems the brother", "4 ushers, ones his cousin"
  if (text === 'thems' && whose.test(next.text)) return "them's";
  if (text === 'ones' && whose.test(next.text) && opensPart(before)) return "one's";
  if (/^(bride|groom)s$/.test(text) && kin.test(next.text) && before?.number === undefined) return text.replace(/s$/, "'s");
  if (/^(day|date|time)s$/.test(text) && before?.text === 'what' && /^(the|it|that|her|his|their|this)$/.test(next.text))
    return text.replace(/s$/, "'s");
  if (!occasion(text) || !opensPart(before) || !(next.kind === 'number' || tellsOf.test(next.text))) return undefined;
  // "the party's", as the forms know it
  return text.replace(/s$/, "'s");
};

const manyWords: ReadonlySet<string> = new Set(roles.flatMap(({ said }) => said.filter((word) => word.endsWith('s'))));
const counts = /^(two|three|four|five|six|seven|eight|nine|ten|both)$/;
const goesOn = /^([,.;:&+/)(-]|and|n|plus|x)$/;
// "groom, 4 gm's, 2 dad's": so many of them, and nobody's.
const manyMeant = (tokens: readonly Token[], index: number): string | undefined => {
  const [before, token, next] = [tokens[index - 1], tokens[index], tokens[index + 1]];
  if (token?.kind !== 'word' || !token.text.endsWith("'s")) return undefined;
  if (next !== undefined && next.kind !== 'line' && next.kind !== 'number' && !goesOn.test(next.text)) return undefined;
  const many = token.text.replace("'s", 's');
  const [ahead, name] = manyWords.has(`${before?.text} ${many}`) ? [tokens[index - 2], `${before?.text} ${many}`] : [before, many];
  if (!manyWords.has(name) || ahead === undefined) return undefined;
  return (ahead.kind === 'number' && ahead.text !== '1') || counts.test(ahead.text) ? many : undefined;
};

// "mums' corsages": the mark behind the s says no more than the s does; in "'mums'" it closes what was quoted.
const ownsMany = (tokens: readonly Token[], index: number): boolean => {
  const [before, mark, next] = [tokens[index - 1], tokens[index], tokens[index + 1]];
  if (mark?.text !== "'" || !mark.glued || before?.kind !== 'word' || !before.text.endsWith('s')) return false;
  if (next?.text !== ':' && (next?.kind !== 'word' || next.glued)) return false;
  return !tokens.slice(Math.max(0, index - 8), index).some((token) => token.text === "'" && !token.glued);
};

/** The tokens with the apostrophes put back where the words around leave no doubt. */
export const withApostrophes = (tokens: readonly Token[]): readonly Token[] => {
  const kept: Token[] = [];
  tokens.forEach((token, index) => {
    if (token.text === "'" && ownsMany(tokens, index)) return;
    const text =
      token.kind === 'word' && (token.text.endsWith('s') || token.text === 'were')
        ? (manyMeant(tokens, index) ?? restored(tokens, index))
        : undefined;
    kept.push(text === undefined ? token : changed(token, { text }));
  });
  return kept;
};

// "the casual's on 32 an hr", "our junior's working fri"; "the casual's hours" are hers.
const oneAtBench = /^(helper|freelancer|casual|florist|junior|student|apprentice|assistant|temp|trainee|designer|volunteer|senior)'s$/;
const whatSheDoes =
  /^(on|in|working|doing|coming|here|free|available|off|away|sick|back|rostered|booked|covering|helping|only|just|also|getting|paid|charging|not)$/;

const isShortIs = (tokens: readonly Token[], index: number): boolean => {
  const [before, token, next] = [tokens[index - 1]?.text ?? '', tokens[index]?.text ?? '', tokens[index + 1]?.text ?? ''];
  if (shortIs.has(token)) return before === 'how';
  return oneAtBench.test(token) && whatSheDoes.test(next);
};

/** "how many's left" as "how many is left", "the casual's on 32" as "the casual is on 32". */
export const withShortIs = (tokens: readonly Token[]): readonly Token[] =>
  tokens.some((_, index) => isShortIs(tokens, index))
    ? tokens.flatMap((token, index) =>
        isShortIs(tokens, index)
          ? [changed(token, { text: token.text.replace(/'?s$/, '') }), changed(token, { text: 'is', glued: false })]
          : [token],
      )
    : tokens;
