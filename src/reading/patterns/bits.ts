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

/** The last number in the first `words`; -1 when there is none. */
export const lastBit = (bits: Uint32Array, words: number): number => {
  let word = words - 1;
  while (word >= 0 && bits[word] === 0) word -= 1;
  return word < 0 ? -1 : (word << 5) + 31 - Math.clz32(bits[word] as number);
};

/** Adds each number whose next one is there, where `goesOn` has it, in the first `words`. */
export const orFromNext = (bits: Uint32Array, goesOn: Uint32Array, words: number): void => {
  for (let word = 0; word < words; word++) {
    const next = ((bits[word] as number) >>> 1) | (word + 1 < words ? (bits[word + 1] as number) << 31 : 0);
    (bits[word] as number) |= next & (goesOn[word] as number);
  }
};

/** Bits with nothing in the first `words`: the same ones where they are long enough. */
export const roomFor = (bits: Uint32Array<ArrayBuffer>, words: number): Uint32Array<ArrayBuffer> => {
  if (bits.length < words) return new Uint32Array(words * 2);
  bits.fill(0, 0, words);
  return bits;
};
