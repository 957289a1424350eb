// The answer to "can we use magnets?": the usual care, said in full however often it is asked, and nothing noted.

import type { WorkAtHand } from '../../handbook/caution-row.ts';
import { cautionsFor } from '../../handbook/cautions.ts';
import type { Hazard } from '../../handbook/hazard-words.ts';
import type { Answer } from '../answer.ts';
import type { Block } from '../reply.ts';
import { cautionLine } from './cautions.ts';
import { notUnderstoodBlocks } from './help.ts';
import { magnetClash } from './magnet-clash.ts';

const workOf: { readonly [hazard in Hazard]: WorkAtHand } = {
  magnet: { fixings: ['magnet'] },
  implant: { wearers: ['implant'] },
  allergy: { wearers: ['allergy'] },
  'silica gel': { methods: ['silica gel'] },
  borax: { methods: ['borax'] },
  'hot glue': { methods: ['hot glue'] },
  foraged: { circumstances: ['foraged'] },
  candles: { circumstances: ['candles'] },
  border: { circumstances: ['border'] },
};

export const hazardAskedBlocks = (answer: Answer): readonly Block[] => {
  const cautions = new Map((answer.hazards ?? []).flatMap((hazard) => cautionsFor(workOf[hazard])).map((one) => [one.id, one]));
  const [first, ...more] = [...cautions.values()];
  if (first === undefined) return notUnderstoodBlocks;
  return [
    { block: 'answer', line: cautionLine(first) },
    ...magnetClash(answer),
    ...more.slice(0, 1).map((caution): Block => ({ block: 'caution', line: cautionLine(caution) })),
  ];
};
