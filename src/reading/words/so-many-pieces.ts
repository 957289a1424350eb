// "1 piece", "15 pieces": how a choice names a number of pieces.

export const soManyPieces = (count: number | string | undefined): string => (String(count) === '1' ? '1 piece' : `${count} pieces`);
