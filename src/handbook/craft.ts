// The steps of making each kind of piece, in order, with the usual craft note beside each. For the card on the wall, not for teaching the trade.

import type { PieceKind } from './pieces.ts';
import { commonPractice, type Source } from './sources.ts';
import { careSources } from './sources-care.ts';
import { wearingSources as from } from './sources-wearing.ts';

export interface CraftStep {
  readonly step: string; // an instruction of a few words
  readonly note: string; // how, or what to watch; '' where the step says it
  readonly source: Source;
}

const step = (words: string, note: string, source: Source = commonPractice): CraftStep => ({ step: words, note, source });

const cutRibbon = step('Cut the ribbon first', 'Every length for the whole batch, before a flower is touched; ends on a slant.');
const wireFlowers = step(
  'Wire the flowers',
  'Pierce a rose or carnation below the head; hook a daisy shape. Use the lightest wire that holds.',
  from.boutonniereSteps,
);
const tapeStems = step(
  'Tape down the stems',
  'Stretch narrow tape until it sticks, and cover all the mechanics: no wire shows.',
  from.classUnit,
);
const coverEnds = step(
  'Cut the wire ends and cover them',
  'Cut square, then tape over each end: bare ends scratch and snag.',
  careSources.wireEnds,
);
const pinToBoard = step('Check it, pin it to the board', 'Shake it, look at it at arm’s length, then pin it under its wearer’s name.');
const hideFixing = (words: string, source: Source = commonPractice): CraftStep => step('Tuck the fixing high and hide it', words, source);

const onTheChest: readonly CraftStep[] = [
  cutRibbon,
  wireFlowers,
  step('Lay the backing leaf', 'Its top third shows above the flower.', from.boutonniereSteps),
  step(
    'Build in three: backing, texture, main flower',
    'Stagger the heads: no two at one height, smallest at the top.',
    from.threeElements,
  ),
  step(
    'Turn it to the wearer’s left',
    'On a left lapel the fuller side faces the middle of the jacket; the outer side stays slim under the arm.',
  ),
  tapeStems,
  step('Trim the stem to 5–6 cm', 'The class rule is 2 to 2½ in below the flower.', from.boutonniereSteps),
  coverEnds,
  step('Wrap the stem', 'A plain wrap or a small V, no bow.', from.stemWrap),
  hideFixing('High on the back of the stem, where the head covers it, so the piece does not tip forward.'),
  pinToBoard,
];

const pinnedCorsage: readonly CraftStep[] = [
  cutRibbon,
  step('Make the bow', 'At least four loops on light wire.', from.corsageSteps),
  wireFlowers,
  step('Group the small florets', 'Tape small heads together on one stem to save time.', from.taping),
  step('Build from the tip down', 'Small to large, heads staggered, at least three sizes; foliage behind.'),
  step('Turn it to the wearer’s left', 'Flowers up; the fuller side faces the middle of the chest.'),
  tapeStems,
  coverEnds,
  step('Tie in the bow', 'At the focal point, its knot covered.'),
  hideFixing('Two pins crossed behind the upper stem hold it from turning.', from.etiquette),
  pinToBoard,
];

const wristCorsage: readonly CraftStep[] = [
  cutRibbon,
  step('Check the band on a wrist', 'Firm but loose enough to slip over the hand; a child’s is smaller.'),
  step('Group small wired heads', 'Tape them in twos and threes so that they sit low.', from.taping),
  step('Lay a flat base of foliage', 'Along the arm, no wider than the wrist.'),
  step('Set the flowers low', 'Heads staggered along the arm, the largest at the middle; nothing to catch a sleeve.'),
  tapeStems,
  coverEnds,
  hideFixing('Fix to the band at two points and cover them with leaf or ribbon; nothing hard against the skin.'),
  step('Check it, box it', 'Shake it, turn it over, run a finger under it, then box it under its wearer’s name.'),
];

const crown: readonly CraftStep[] = [
  cutRibbon,
  step('Cut the base to the head', 'Measure the head and leave a ribbon tie at the back to adjust it.'),
  step('Make the small bunches', 'All of one length and sorted, before any goes on the base.'),
  step('Tape the bunches on one way round', 'Each covers the stems of the last; heads staggered in height.'),
  step('Set the fullest part', 'Just off the middle of the brow, or where the client asked.'),
  step('Cover all the mechanics', 'Inside as well: nothing may scratch or pull hair.'),
  coverEnds,
  step('Check it on a stand', 'From all sides; then box it flat in tissue under its wearer’s name.'),
];

const hairFlower: readonly CraftStep[] = [
  cutRibbon,
  step('Choose comb or pins', 'Ask which way the hair is worn and on which side.'),
  step('Keep the heads light', 'Short wires, small heads, staggered.'),
  step('Build flat against the comb', 'The finished edge shows, the taped edge goes under the hair.'),
  step('Cover all the mechanics', 'Tape and leaf over every wire; nothing to pull hair.'),
  coverEnds,
  hideFixing('The teeth or pin stay clear of tape so that they slide in.'),
  step('Check it, pin it to the board', 'Shake it, then pin it under its wearer’s name; keep a few spare grips with it.'),
];

const byPiece: Readonly<Record<PieceKind, readonly CraftStep[]>> = {
  buttonhole: onTheChest,
  'pin corsage': pinnedCorsage,
  corsage: pinnedCorsage,
  'wrist corsage': wristCorsage,
  'flower crown': crown,
  'hair flower': hairFlower,
  unspecified: onTheChest,
};

/** The steps for this kind in working order. A kind nobody has named yet is shown as a lapel piece. */
export const craftSteps = (piece: PieceKind): readonly CraftStep[] => byPiece[piece];
