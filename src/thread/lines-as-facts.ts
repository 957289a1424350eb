// Lines of an order said again as facts, and how many they are of.

import type { Fact } from '../reading/fact.ts';
import type { OrderLine } from './event.ts';

export const asFacts = (lines: readonly OrderLine[], words: string): Fact[] => lines.map((line) => ({ fact: 'pieces', words, ...line }));

export const countedUp = (list: readonly { readonly count: number }[]): number => list.reduce((all, { count }) => all + count, 0);
