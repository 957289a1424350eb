// An array filled place by place, as the engine likes it: one made by `map` may count as having gaps, and code that met the one kind starts anew when it meets the other.

/** The same members in an array without gaps. */
export const packed = <Member>(members: readonly Member[]): Member[] => {
  const filled: Member[] = [];
  for (const member of members) filled.push(member);
  return filled;
};
