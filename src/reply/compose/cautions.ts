// Usual care, where the work calls for it: once in a thread, two at most in one reply, and again on the sheet where the hazard is.

import type { CautionId } from '../../handbook/caution-row.ts';
import { type Caution, cautionsFor, cautionWords } from '../../handbook/cautions.ts';
import { type Hazard, hazards, hazardsIn } from '../../handbook/hazard-words.ts';
import { cautionsSaid } from '../../handover/work-at-hand.ts';
import type { Fact } from '../../reading/fact.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { lineToText } from '../reply-to-text.ts';
import { joined, text } from '../span.ts';
import { factWords } from '../words/facts.ts';

const most = 2; // in one reply; the others wait for the next

export const cautionLine = (caution: Caution): Line => text`${cautionWords(caution)}`;

export const cautionBlocks = (cautions: readonly Caution[]): readonly Block[] =>
  cautions.map((caution) => ({ block: 'caution', line: cautionLine(caution) }));

/** A wage somebody stated: "12.71 an hour". */
export const tellsWage = (fact: Fact): boolean => fact.fact === 'crew' && fact.wage !== undefined;

/** Every caution this event calls for by what was said. `wage`: whether somebody in the thread stated one. */
export const cautionsOf = ({ event, studio, price }: Pick<Answer, 'event' | 'studio' | 'price'>, wage: boolean): readonly Caution[] => {
  const taxed = price?.ok === true && price.value.priced.terms.tax.basis.value !== 'none';
  return cautionsSaid(event, studio, [...(taxed ? (['tax'] as const) : []), ...(wage ? (['wages'] as const) : [])]);
};

/** Hazards that this message is the first to tell of. */
const heardNow = ({ before, event }: Answer): readonly Hazard[] =>
  hazards.filter((hazard) => event.care?.heard.includes(hazard) && !before.care?.heard.includes(hazard));

/** Our own suggestion of silica gel is cautioned too. */
const suggestsSilica = (blocks: readonly Block[]): boolean =>
  blocks.some((block) => block.block === 'list' && block.items.some((item) => /silica gel/.test(lineToText(item))));

/** What this reply has to add to its blocks. Tax is left out: the price says "check with your accountant" itself. */
const cautionsDue = (answer: Answer, blocks: readonly Block[]): readonly Caution[] => {
  if (answer.shared || answer.how === 'withdrawn' || answer.how === 'undone') return [];
  const suggested = suggestsSilica(blocks) ? cautionsFor({ methods: ['silica gel'] }) : [];
  if (answer.stated.length === 0 && heardNow(answer).length === 0 && suggested.length === 0) return [];
  const shown = new Set<string>(answer.event.care?.shown);
  const here = new Set(blocks.flatMap((block) => (block.block === 'caution' ? [lineToText(block.line)] : [])));
  const all = new Map([...cautionsOf(answer, answer.stated.some(tellsWage)), ...suggested].map((caution) => [caution.id, caution]));
  return [...all.values()]
    .filter((caution) => caution.id !== 'tax' && !shown.has(caution.id) && !here.has(lineToText(cautionLine(caution))))
    .slice(0, most);
};

const heardWords: { readonly [hazard in Hazard]: string } = {
  magnet: 'magnets',
  implant: 'an implant',
  allergy: 'an allergy',
  'silica gel': 'silica gel',
  borax: 'borax',
  'hot glue': 'hot glue',
  foraged: 'foraged',
  candles: 'candles',
  border: 'crossing a border',
};

/** Words that only told of a hazard get a short answer. */
const heardBlocks = (answer: Answer): readonly Block[] => {
  const heard = (answer.hazards ?? heardNow(answer)).map((hazard) => heardWords[hazard]);
  if (heard.length > 0) return [{ block: 'answer', line: text`Noted: ${heard.join(', ')}.` }];
  const denied = hazards.filter((hazard) => answer.before.care?.heard.includes(hazard) && !answer.event.care?.heard.includes(hazard));
  if (denied.length > 0)
    return [{ block: 'answer', line: text`Noted: no ${denied.map((hazard) => heardWords[hazard].replace(/^an /, '')).join(', ')}.` }];
  const said = answer.stated.flatMap((fact) => saidWords(fact, answer.manner));
  return [{ block: 'answer', line: said.length > 0 ? text`Noted: ${joined(said, ', ')}.` : text`Noted.` }];
};

const saidWords = (fact: Fact, manner: Manner): readonly Line[] => {
  if (fact.fact === 'tax' || fact.fact === 'price' || fact.fact === 'material' || fact.fact === 'date') return [factWords(fact, manner)];
  return fact.fact === 'change' && typeof fact.to === 'string' && (fact.what === 'tax' || fact.what === 'material')
    ? [text`${fact.what} ${fact.to}`]
    : [];
};

/** The reply so far with the cautions it has to carry, and their ids. */
export const withCautions = (
  answer: Answer,
  before: readonly Block[],
  clash: readonly Block[] = [],
): { readonly blocks: readonly Block[]; readonly cautioned: readonly CautionId[] } => {
  const blocks = before.length === 0 && answer.ask === undefined ? heardBlocks(answer) : before;
  const due = cautionsDue(answer, blocks);
  return { blocks: [...blocks, ...clash, ...cautionBlocks(due)], cautioned: due.map(({ id }) => id) };
};

/** Words nobody used, without those a hazard was heard in; where only hazards were heard, words without a figure are no loss. */
export const unheard = ({ unread, stated, questions, ask, how }: Answer): readonly string[] => {
  const only = how === 'stated' && stated.length === 0 && questions.length === 0 && ask === undefined;
  return unread.filter((words) => hazardsIn(words).length === 0 && !(only && !/\d/.test(words)));
};
