// Words of a message that tell of a hazard, take one back or ask about it, and fixings named as if they were in a recipe that has none.

import { type Hazard, hazardsDenied, hazardsIn } from '../handbook/hazard-words.ts';
import { ingredientKey } from '../handbook/ingredient-names.ts';
import { ingredientsOf } from '../handover/work-at-hand.ts';
import type { Fact } from '../reading/fact.ts';
import type { Reading } from '../reading/reading.ts';
import type { EventState } from '../thread/event.ts';
import { isPriceList } from './import-prices.ts';
import type { IncomingMessage } from './ports.ts';

const isTyped = (message: IncomingMessage): boolean => message.kind !== 'tap' && message.kind !== 'file' && !isPriceList(message);

/** Hazards the words tell of, kept beside what they state. */
export const hazardsOf = (message: IncomingMessage): readonly Hazard[] => (isTyped(message) ? hazardsIn(message.text) : []);

const asks = /\?\s*$|^\s*(can|could|should|shall|may|is|are|do|does|would|will|what|which|how|why)\b/i;

/** "Can we use magnets?" chooses none. */
export const isHazardAsked = (message: IncomingMessage): boolean => asks.test(message.text) && hazardsOf(message).length > 0;

export const heardFacts = (message: IncomingMessage): readonly Fact[] => {
  if (!isTyped(message)) return [];
  const [heard, denied] = [hazardsIn(message.text), asks.test(message.text) ? [] : hazardsDenied(message.text)];
  if (heard.length + denied.length === 0) return [];
  return [
    { fact: 'care', ...(heard.length > 0 ? { heard: [...heard] } : {}), ...(denied.length > 0 ? { denied: [...denied] } : {}), words: '' },
  ];
};

const fixing = /^(safety |pearl )?(magnet|magnetic|pin|brooch)s?( (backs?|clips?|after all))?$/i;

/** "Magnets, not pins" says how the pieces are held on; only a recipe that has them is changed by it. */
export const withoutFixings = (reading: Reading, event: EventState): Reading => {
  const used = new Set(ingredientsOf(event).map(ingredientKey));
  const isFixing = (name: string): boolean => fixing.test(name) && !used.has(ingredientKey(name));
  const about = (fact: Fact): boolean => {
    if (fact.fact !== 'recipe' || fact.lines.length > 0) return false;
    const old = [...(fact.drops ?? []), ...(fact.swaps ?? []).map((swap) => swap.ingredient)];
    return old.length > 0 && old.every(isFixing);
  };
  return reading.facts.some(about) ? { ...reading, facts: reading.facts.filter((fact) => !about(fact)) } : reading;
};
