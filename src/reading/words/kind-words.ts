// What so many of a kind are called where no manner of saying is at hand: "3 flower crowns", "1 corsage", "22 pieces" where nobody has named them.

export const kindWords = (piece: string, count: number): string => `${piece === 'unspecified' ? 'piece' : piece}${count === 1 ? '' : 's'}`;

/** The number with it, as a choice names it. */
export const soMany = (count: number | string | undefined, piece = 'unspecified'): string => `${count} ${kindWords(piece, Number(count))}`;
