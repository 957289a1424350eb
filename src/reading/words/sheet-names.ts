// Things to hang up or hand round whose names begin with a piece: "pin-on sheet" speaks of no pin-on corsage.

import { wordList } from './word-list.ts';

export const sheetNames: Readonly<Record<string, readonly string[]>> = {
  pinOn: wordList(`
  pin-on sheet, pin on sheet, pinon sheet, pin-on list, pin on list, pin-on sheets, pin on sheets, pinning sheet, pinning list,
  pin-on card, pin on card, pin-up sheet, who wears what sheet, wearers sheet, wearer sheet, pin-on plan, pin-on guide, pin on guide
`),
};
