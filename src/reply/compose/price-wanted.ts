// "Price for 20 bouts?" in a thread with neither: the price is asked back, and how many they are is kept with that question.

import type { OpenQuestion } from '../../reading/reading.ts';
import type { Answer } from '../answer.ts';

const ofPrices = /^(price|total|whatIf)$/;

export const priceWanted = ({ questions, stated, event, ask }: Answer): OpenQuestion | undefined => {
  const [only, second] = questions;
  if (only === undefined || second !== undefined || !ofPrices.test(only.asks) || stated.length > 0 || ask !== undefined) return undefined;
  const { number, piece, amount, differs } = only;
  const isOpen = event.lines.length === 0 && event.price === undefined && event.told === undefined && event.open?.kind !== 'choice';
  if (!isOpen || number === undefined || number < 1 || !Number.isInteger(number) || amount !== undefined || differs !== undefined)
    return undefined;
  return { kind: 'missing', about: 'price', piece: piece ?? 'unspecified', count: number };
};
