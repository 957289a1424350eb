// A binary heap of job numbers: the first by the given order is always on top.

export interface Heap {
  push(item: number): void;
  pop(): number | undefined;
  top(): number | undefined;
}

export const newHeap = (before: (a: number, b: number) => boolean): Heap => {
  const items: number[] = [];
  const at = (place: number): number => items[place] as number;
  const swap = (a: number, b: number): void => {
    const item = at(a);
    items[a] = at(b);
    items[b] = item;
  };
  return {
    top: () => items[0],
    push: (item) => {
      let place = items.push(item) - 1;
      while (place > 0) {
        const parent = (place - 1) >> 1;
        if (!before(at(place), at(parent))) return;
        swap(place, parent);
        place = parent;
      }
    },
    pop: () => {
      const top = items[0];
      const last = items.pop();
      if (last === undefined || items.length === 0) return top;
      items[0] = last;
      for (let place = 0; ; ) {
        const left = 2 * place + 1;
        if (left >= items.length) return top;
        const first = left + 1 < items.length && before(at(left + 1), at(left)) ? left + 1 : left;
        if (!before(at(first), at(place))) return top;
        swap(place, first);
        place = first;
      }
    },
  };
};
