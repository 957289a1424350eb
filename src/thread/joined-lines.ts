// Lines of an order that differ in nothing but the number are one line.

import type { OrderLine } from './event.ts';

/** Lines with a price of their own for the line, or with a range, stay as they were said. */
export const joinedLines = (lines: readonly OrderLine[]): readonly OrderLine[] => {
  const kept = new Map<string, OrderLine>();
  for (const line of lines) {
    const { count, ...rest } = line;
    const single = line.price?.per === 'line' || line.countMax !== undefined;
    const key = single ? `${kept.size}` : JSON.stringify(Object.entries(rest).sort());
    const same = kept.get(key);
    kept.set(key, same === undefined ? line : { ...same, count: same.count + count });
  }
  return [...kept.values()];
};

/** The lines without a material of their own; `only`: those in this one. */
export const withoutMaterials = (lines: readonly OrderLine[], only?: string | number): readonly OrderLine[] =>
  joinedLines(
    lines.map((line) => {
      const { material, ...rest } = line;
      return only === undefined || material === only ? rest : line;
    }),
  );
