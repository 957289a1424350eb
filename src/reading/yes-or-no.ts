// A yes or a no to a question that offers one thing, or to keep what there is.

import type { Ask, Choice } from './reading.ts';
import type { Message } from './text/message.ts';

// "Plan with this from now on?": yes takes what is offered where it is one thing or all of it, no keeps the figure there is.
const agrees = /^(yes|yep|yeah|yup|aye|ok|okay|sure|do|please)$/;
const declines = /^(no|nope|nah|not)$/;
const besideAnswer =
  /^(thanks|ta|thank|you|please|pls|do|that|it|now|then|use|go|ahead|on|with|thats|that's|fine|good|great|leave|keep|as|is)$/;
const asksYesOrNo: ReadonlySet<string> = new Set(['plan with this', 'part left', 'really forget']);
const heardOnly = /^(ok|okay)$/; // deletes nothing
export const accepted = (message: Message, { why, choices }: Ask): Choice | undefined => {
  const said = message.tokens.filter(({ kind }) => kind !== 'sign' && kind !== 'line').map((token) => token.text);
  if (why === 'really forget' && said.some((word) => heardOnly.test(word))) return undefined;
  const [yes, no] = [said.some((word) => agrees.test(word)), said.some((word) => declines.test(word))];
  if (
    !(asksYesOrNo.has(why) || choices.length === 1) ||
    yes === no ||
    !said.every((word) => agrees.test(word) || declines.test(word) || besideAnswer.test(word))
  )
    return undefined;
  const last = choices.at(-1);
  const keeps = last?.words.startsWith('keep') ?? false;
  if (no) return keeps ? last : undefined;
  const offered = keeps ? choices.slice(0, -1) : choices;
  return offered.length === 1 ? offered[0] : offered.find((choice) => choice.words === 'all of these');
};
