// Sets of small numbers as bits, thirty-two to a word.

export const add = (bits: Uint32Array, number: number): void => {
  (bits[number >> 5] as number) |= 1 << (number & 31);
};

export const has = (bits: Uint32Array, number: number): boolean => (((bits[number >> 5] as number) >> (number & 31)) & 1) === 1;

/** The first number from `from` on and before `end`; -1 when there is none. */
export const nextBit = (bits: Uint32Array, from: number, end = bits.length << 5): number => {
  if (from >= end) return -1;
  let word = from >> 5;
  let left = (bits[word] as number) & (-1 << (from & 31));
  while (left === 0) {
    word += 1;
    if (word << 5 >= end) return -1;
    left = bits[word] as number;
  }
  const found = (word << 5) + 31 - Math.clz32(left & -left);
  return found < end ? found : -1;
};

/** The numbers of all lists, each once and in order. */
export const inOrder = (lists: readonly (readonly number[])[]): readonly number[] => {
  const [only, another] = lists;
  if (another === undefined) return only ?? [];
  const bits = new Uint32Array((Math.max(...lists.map((list) => list.at(-1) ?? 0)) >> 5) + 1);
  for (const list of lists) for (const number of list) add(bits, number);
  const numbers: number[] = [];
  for (let number = nextBit(bits, 0); number !== -1; number = nextBit(bits, number + 1)) numbers.push(number);
  return numbers;
};
