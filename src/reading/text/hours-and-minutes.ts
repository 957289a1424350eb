// "1 hr 10 mins", "1hr 15 each": one length of time, told in hours and minutes. In "2 hrs 10 lapels" the ten are lapels.

import { asNumber, isSingle, type Token } from './token.ts';

const joint = /^(and|&|n)$/;
// What may stand behind bare minutes; anything else could be counted by them.
const closes =
  /^(,|\.|\)|each|ea|apiece|per|a|an|\/|on|total|all|altogether|today|tomorrow|tmrw|tonight|ish|or|start|in total|all in|all up|max|tops|a piece|both)$/;
const weekday = /^(mon|tues?|weds?|thu|thurs?|fri|sat|sun)(day|sday|nesday|rsday|urday)?s?$/;
const forSome = /^(for|to)$/;

const isLength = (token: Token | undefined, unit: string): boolean =>
  token?.number?.form === 'duration' && token.number.unit === unit && isSingle(token.number);

const bareMinutes = (tokens: readonly Token[], index: number): boolean => {
  const [token, next, after] = [tokens[index], tokens[index + 1], tokens[index + 2]];
  if (token?.number?.form !== 'plain' || !/^([1-5][05]|05)$/.test(token.text)) return false;
  if (next === undefined || next.kind === 'line' || weekday.test(next.text)) return true;
  if (forSome.test(next.text)) return next.text === 'for' ? after?.number !== undefined : after?.text !== 'go';
  return closes.test(next.text);
};

/** The tokens with hours and the minutes behind them as one number of minutes. */
export const joinHoursAndMinutes = (tokens: readonly Token[]): readonly Token[] => {
  if (!tokens.some((token) => isLength(token, 'hour'))) return tokens;
  const kept: Token[] = [];
  for (let index = 0; index < tokens.length; index++) {
    const token = tokens[index] as Token;
    if (!isLength(token, 'hour')) {
      kept.push(token);
      continue;
    }
    const hours = Number(token.number?.amount);
    const at = joint.test(tokens[index + 1]?.text ?? '') ? index + 2 : index + 1;
    const minutes = Number(tokens[at]?.number?.amount);
    const told = isLength(tokens[at], 'min') ? minutes < 60 : at === index + 1 && bareMinutes(tokens, at);
    if (!Number.isInteger(hours) || hours > 14 || !told) {
      kept.push(token);
      continue;
    }
    const approx = token.number?.approx === true ? { approx: true as const } : {};
    kept.push(asNumber(tokens, index, at + 1, { form: 'duration', amount: String(hours * 60 + minutes), unit: 'min', ...approx }));
    index = at;
  }
  return kept;
};
