// Where what the sheets say was read, gathered on the last page so that the cards on the wall stay clear.

import { sourceLine } from '../handbook/sources.ts';
import type { SheetsInput } from './sheet-input.ts';

/** "Making and wearing: buttonhole", "Take care: magnet" and the like, each with the lines of its sources. */
export const sheetSources = ({
  cards,
  cautions,
}: SheetsInput): readonly { readonly about: string; readonly lines: readonly string[] }[] => [
  ...cards.map(({ one, steps, worn }) => ({
    about: `Making and wearing: ${one}`,
    lines: [...new Set([...steps.map((step) => step.source), ...worn.sources])].map(sourceLine),
  })),
  ...cautions.map((caution) => ({
    about: `Take care: ${caution.id.replace('-', ' ')}`,
    lines: caution.sources.map(sourceLine),
  })),
];
