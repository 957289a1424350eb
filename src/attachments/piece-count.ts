// Pieces as an attachment shows them: the count beside a name already put in the studio's own word and number ("buttonholes", "boutonniere").

export interface PieceCount {
  readonly name: string;
  readonly count: number; // whole pieces
}

/** "10 buttonholes, 2 flower crowns"; '' for none. */
export const piecesLine = (pieces: readonly PieceCount[]): string => pieces.map((piece) => `${piece.count} ${piece.name}`).join(', ');

export const piecesInAll = (pieces: readonly PieceCount[]): number => pieces.reduce((total, piece) => total + piece.count, 0);
