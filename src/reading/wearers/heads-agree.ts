// Whether what was told of how many wear them agrees: "16 ppl wearing flowers, 10 his side 6 hers".

interface Numbers {
  readonly heads: readonly number[];
  readonly sides: readonly number[];
  readonly plus: number;
  readonly beside: boolean;
  readonly sum: number;
  readonly less: number;
}

const summed = (counts: readonly number[]): number => counts.reduce((all, count) => all + count, 0);

/** "party of 12 but only the men wear one, so 6": how many those are, where it is said. */
export const fewOf = ({ heads: [all = 0, told, third], sides, plus, sum, less }: Numbers): number | undefined => {
  const few = told ?? sum;
  if (third !== undefined || sides.length > 0 || plus > 0 || less > 0 || (told !== undefined && sum > 0 && sum !== told)) return undefined;
  return few > 0 && few < all ? few : undefined;
};

/** How many they make together; undefined where two of them disagree, or may count somebody twice. */
export const agreed = ({ heads, sides, plus, beside, sum, less }: Numbers, sure: boolean): number | undefined => {
  // "10 in the party but 2 don't want any, so 8 wearing"
  if (less > 0) {
    const all = heads[0] ?? summed(sides);
    const told = heads[1] ?? (sum > 0 ? sum : all - less);
    return told === all - less && told > 0 && heads.length <= 2 && !Number.isNaN(sum) && !beside && sure ? told : undefined;
  }
  const [first = 0, ...rest] = heads;
  const both = summed(sides);
  if (sides.length !== 0 && sides.length !== 2) return undefined;
  if (heads.length === 0 && sides.length === 0) return undefined;
  // "8 wearing: 3 kids, 5 adults"; "party is 6 and 6" tells no total.
  if (rest.length === 1 || (rest.length > 1 && summed(rest) !== first)) return undefined;
  const all = heads.length === 0 ? both + plus : first;
  if (heads.length > 0 && sides.length > 0 && first !== both && first !== both + plus) return undefined;
  if (sum > 0) return sum === all || sum === all + plus ? sum : undefined;
  if (Number.isNaN(sum)) return undefined;
  // "11 in the party plus the celebrant": whether she is one of them is not said.
  if (beside && heads.length > 0) return undefined;
  return sure || sides.length > 0 ? all : undefined;
};
