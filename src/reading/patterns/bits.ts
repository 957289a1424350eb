// Sets of small numbers as bits, thirty-two to a word.

export const add = (bits: Uint32Array, number: number): void => {
  (bits[number >> 5] as number) |= 1 << (number & 31);
};

export const has = (bits: Uint32Array, number: number): boolean => (((bits[number >> 5] as number) >> (number & 31)) & 1) === 1;

let scratch = new Uint32Array(64);
/** The numbers of all lists, each once and in order; `wanted` leaves some out. */
export const inOrder = (lists: readonly (readonly number[])[], wanted?: (number: number) => boolean): readonly number[] => {
  if (lists.length <= 1) return wanted === undefined ? (lists[0] ?? []) : (lists[0] ?? []).filter(wanted);
  const most = Math.max(...lists.map((list) => list.at(-1) ?? 0));
  if (most >> 5 >= scratch.length) scratch = new Uint32Array((most >> 4) + 1);
  for (const list of lists) for (const number of list) if (wanted === undefined || wanted(number)) add(scratch, number);
  const numbers: number[] = [];
  for (let word = 0; word <= most >> 5; word++) {
    for (let left = scratch[word] as number; left !== 0; left &= left - 1) numbers.push((word << 5) + 31 - Math.clz32(left & -left));
    scratch[word] = 0;
  }
  return numbers;
};
