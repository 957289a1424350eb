// The kinds of wearable flower this studio makes. 'unspecified' stands for "40 pieces" when nobody has said which kind yet.

export const pieceKinds = ['buttonhole', 'wrist corsage', 'pin corsage', 'corsage', 'flower crown', 'hair flower', 'unspecified'] as const;
export type PieceKind = (typeof pieceKinds)[number];

export const materials = ['dried', 'fresh', 'mixed', 'preserved', 'artificial'] as const;
export type Material = (typeof materials)[number];
