// How each kind of question back to the person is worded. One question at a time; its choices follow it as buttons and as words.

import type { Ask, AskReason } from '../../reading/reading.ts';
import type { Line } from '../reply.ts';
import { quoted, text } from '../span.ts';

const sentences: { readonly [why in AskReason]: (ask: Ask) => Line } = {
  'each or all': (ask) => {
    const [fact] = ask.choices[0]?.facts ?? [];
    const one = fact?.fact === 'pack' ? (fact.per ?? 'pack') : 'piece';
    return text`Is ${quoted(ask.words)} for each ${one} or for all of them?`;
  },
  'sum or total': (ask) => text`The lines and ${quoted(ask.words)} do not agree. Which holds?`,
  'which month': (ask) => text`Which month is ${quoted(ask.words)}?`,
  'which day': (ask) => text`Which day do you mean by ${quoted(ask.words)}?`,
  'which date': (ask) => text`I read more than one date in ${quoted(ask.words)}. Which is the event?`,
  'day or month first': (ask) => text`Which date is ${quoted(ask.words)}?`,
  'which piece': (ask) => text`Which pieces is ${quoted(ask.words)} about?`,
  'which number': (ask) => text`What does ${quoted(ask.words)} set?`,
  'low or high': (ask) => text`${quoted(ask.words)}: which is it? Nothing is kept until you say.`,
  'this or that': (ask) => text`${quoted(ask.words)}: which goes in? Nothing is kept until you say.`,
  'finished or begun': (ask) => text`${quoted(ask.words)}: are those finished, or only begun? I have counted none as made.`,
  'other currency': (ask) =>
    text`${quoted(ask.words)} is not the studio's currency, and I never convert. Is the figure in the studio's own money?`,
  'which material': () => text`Which material are they? The tax rate, or the calendar, depends on it.`,
  'which rate': () => text`Mixed pieces: which tax rate does your accountant use?`,
  'which recipe': (ask) =>
    ask.choices.length === 1 ? text`Shall I take it as the recipe?` : text`Shall I take one of these as the recipe?`,
  'which recipe lines': (ask) => text`Is ${quoted(ask.words)} beside the rest of the recipe, or instead of all of it?`,
  'instead of which': (ask) => text`What does ${quoted(ask.words)} take the place of?`,
  'spent on what': (ask) => text`${quoted(ask.words)}: on stems alone, or on everything (ribbon, pins and all)?`,
  'plan with this': () => text`Plan with this from now on? Nothing changes until you choose.`,
  'really forget': () => text`Shall I forget it for good?`,
  'ordered or not': (ask) => text`${quoted(ask.words)}: are those ordered? Nothing is kept until you say.`,
  'fewer pieces': (ask) => text`${quoted(ask.words)}: fewer pieces too? The order stays as it is until you say.`,
  'part left': (ask) => text`I could not use ${quoted(ask.words)}, so nothing is kept yet. Take the rest, or say it another way?`,
  'did you mean': (ask) => text`I don't know the word in ${quoted(ask.words)}. Did you mean this?`,
};

export const askLine = (ask: Ask): Line => sentences[ask.why](ask);
