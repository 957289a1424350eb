// Turns the nodes of a pattern into steps that try it at one place: the longest repeats first, and the first way that fits.

import type { Token } from '../text/token.ts';
import type { Choices, Node } from './parse-pattern.ts';
import type { Test } from './token-kinds.ts';

/** Where a way through the rest of a pattern ends; `nowhere` when there is none. The slots hold the tokens kept on the way. */
type Step = (tokens: readonly Token[], index: number, end: number, slots: (Token | undefined)[]) => number;
const nowhere = -1;

/** A match: where it stands and the tokens it keeps, by name. */
export interface Match {
  readonly start: number;
  readonly end: number;
  readonly kept: Readonly<Record<string, Token>>;
}

const wordStep =
  (text: string, then: Step): Step =>
  (tokens, index, end, slots) =>
    index < end && tokens[index]?.text === text ? then(tokens, index + 1, end, slots) : nowhere;

const tagStep =
  (test: Test, slot: number, then: Step): Step =>
  (tokens, index, end, slots) => {
    const token = tokens[index];
    if (index >= end || token === undefined || !test(token)) return nowhere;
    const before = slots[slot];
    slots[slot] = token;
    const found = then(tokens, index + 1, end, slots);
    if (found === nowhere) slots[slot] = before;
    return found;
  };

const firstOf = (steps: readonly Step[]): Step => {
  const [only, another] = steps;
  if (only !== undefined && another === undefined) return only;
  return (tokens, index, end, slots) => {
    for (let at = 0; at < steps.length; at++) {
      const found = (steps[at] as Step)(tokens, index, end, slots);
      if (found !== nowhere) return found;
    }
    return nowhere;
  };
};

const byWordStep =
  (byWord: ReadonlyMap<string, Step>, others: Step): Step =>
  (tokens, index, end, slots) =>
    ((index < end ? byWord.get(tokens[index]?.text ?? '') : undefined) ?? others)(tokens, index, end, slots);

const fewChoices = 4; // are sooner tried than looked up

const orElse =
  (first: Step, second: Step): Step =>
  (tokens, index, end, slots) => {
    const found = first(tokens, index, end, slots);
    return found === nowhere ? second(tokens, index, end, slots) : found;
  };

const slotOf = (name: string, names: string[]): number => {
  if (!names.includes(name)) names.push(name);
  return names.indexOf(name);
};

const stepsOf = (nodes: readonly Node[], names: string[], last: Step): Step =>
  nodes.reduceRight<Step>((then, node) => {
    if (node.is === 'word') return wordStep(node.text, then);
    if (node.is === 'tag') return tagStep(node.test, slotOf(node.name, names), then);
    if (node.is === 'choice') {
      const steps = new Map(node.choices.map((choice) => [choice, stepsOf(choice, names, then)]));
      const of = (choices: Choices): Step => firstOf(choices.map((choice) => steps.get(choice) as Step));
      if (node.choices.length <= fewChoices) return of(node.choices);
      return byWordStep(new Map([...node.byWord].map(([word, choices]) => [word, of(choices)])), of(node.others));
    }
    let more = then;
    for (let times = node.most; times > 0; times--) {
      const again = stepsOf(node.only, names, more);
      more = times > node.least ? orElse(again, then) : again;
    }
    return more;
  }, last);

/** Tries the nodes at one place. The steps are made when first needed: most patterns never are. */
export const trialOf = (nodes: readonly Node[]): ((tokens: readonly Token[], index: number, end: number) => Match | undefined) => {
  const names: string[] = [];
  let steps: Step | undefined;
  // One set of slots for all trials: a trial that fails leaves them empty.
  const slots: (Token | undefined)[] = [];
  return (tokens, index, end) => {
    steps ??= stepsOf(nodes, names, (_, reached) => reached);
    const reached = steps(tokens, index, end, slots);
    if (reached === nowhere) return undefined;
    const kept: Record<string, Token> = {};
    for (let slot = 0; slot < slots.length; slot++) {
      const token = slots[slot];
      if (token !== undefined) kept[names[slot] as string] = token;
      slots[slot] = undefined;
    }
    return { start: index, end: reached, kept };
  };
};
