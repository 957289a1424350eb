// Whether the order as it would now stand can be priced. A figure that can't be worked with refuses the message; a tax rate that
// depends on a material nobody has said is asked about.

import type { Material } from '../handbook/pieces.ts';
import { materials } from '../handbook/pieces.ts';
import { labourProblem } from '../pricing/check-order.ts';
import { rulesProblem } from '../pricing/event-rules.ts';
import { pieceTerms } from '../pricing/piece-terms.ts';
import type { Ask, Choice } from '../reading/reading.ts';
import type { Answer } from '../reply/answer.ts';
import { priceBefore } from '../reply/compose/price-before.ts';
import type { Problem, ProblemData } from '../values/problem.ts';

export type PriceTrouble = { readonly kind: 'refuse'; readonly problem: Problem } | { readonly kind: 'ask'; readonly ask: Ask };

/** What a studio's own settings cause is shown, but never refuses what a person says. */
const notTheMessage: ReadonlySet<Problem['code']> = new Set(['tax-rate-unknown', 'currency-unknown', 'price-missing', 'nothing-to-price']);

export const priceTrouble = (answer: Answer): PriceTrouble | undefined => {
  const { price, stated } = answer;
  if (!price) {
    const wrong = termsTrouble(answer);
    return wrong ? { kind: 'refuse', problem: wrong } : undefined;
  }
  if (price.ok) return undefined;
  // An order that had its price must not lose it to a tax whose rate nobody has told.
  if (price.problem.code === 'tax-rate-unknown' && priceBefore(answer)?.ok) return { kind: 'refuse', problem: price.problem };
  if (notTheMessage.has(price.problem.code)) return undefined;
  if (price.problem.code === 'tax-depends-on-material') {
    return { kind: 'ask', ask: askMaterial(price.problem.data, stated.map((fact) => fact.words).join(', ')) };
  }
  return { kind: 'refuse', problem: price.problem };
};

/** An own rule that can't be used is refused when it is said, though nothing has a price yet. */
const termsTrouble = ({ event: { rules }, studio }: Answer): Problem | undefined => {
  if (rules.length === 0) return undefined;
  const { rule, share } = pieceTerms(studio.settings, rules).labour;
  return rulesProblem(rules) ?? labourProblem({ rule: rule.value, share: share.value });
};

const askMaterial = ({ mixed, rates }: ProblemData['tax-depends-on-material'], words: string): Ask => ({
  about: mixed ? 'tax' : 'material',
  why: mixed ? 'which rate' : 'which material',
  words,
  choices: mixed ? rateChoices(rates) : materialChoices(rates),
});

type Rates = ProblemData['tax-depends-on-material']['rates'];

const materialChoices = (rates: Rates): readonly Choice[] =>
  rates.flatMap(({ material }) =>
    isMaterial(material) ? [{ words: material, facts: [{ fact: 'material', material, words: material }] }] : [],
  );

/** Each rate once, however many materials bear it. */
const rateChoices = (rates: Rates): readonly Choice[] =>
  [...new Set(rates.map(({ rate }) => rate))].map((rate) => ({
    words: `${rate} % (as ${rates
      .filter((one) => one.rate === rate)
      .map(({ material }) => material)
      .join(', ')})`,
    facts: [{ fact: 'tax', rate, words: `${rate} %` }],
  }));

const isMaterial = (word: string): word is Material => materials.some((material) => material === word);
