// Words of English, and names, that stand one slip from a word the reader knows: never taken for it. A test holds the words against a dictionary.

import { wordList } from './word-list.ts';

const english = wordList(`
  acme, acts, adds, alight, alter, amid, anil, anils, anna, annas, anther, appel, aright, arise, arts, baches, barely, barre, basses,
  bathes, bellow, beside, bets, birdies, boost, boosts, bought, braking, bran, brio, busses, canceled, cartoon, cast, castes, casts,
  causal, clod, coed, coeds, collet, collets, compete, competed, cots, craton, cross, cuffed, cultch, damage, decease, deceased, delver,
  donees, dorp, dose, ecus, eras, ergo, erst, etas, evil, evils, fires, frae, frise, froth, froward, fusees, fusses, gest, gist, gnus,
  gradation, grandam, grandams, granddaddy, gules, haole, hooping, hopping, hots, juts, kist, labeled, labeling, laddies, lassie, lats, latter,
  laving, lest, lien, loosing, louts, mantle, mantles, marred, mattes, metres, mien, minuet, minuets, moas, mono, mortgagee, mortgagees,
  moues, mousses, muts, naan, naans, nether, noes, nooses, noting, nuder, oast, odes, odor, odors, otto, pacing, paly, paps, pats,
  patsies, patsy, pepping, pervious, pets, pining, planer, poises, postpone, pots, prat, prefect, promisee, puls, pyas, quiet, rede,
  relied, require, rets, revise, roes, roughy, ryas, scarp, sene, seta, sicking, sifted, signer, signers, sing, sings, sliver, sopped,
  sparse, spilt, stain, stared, stated, stele, sties, subs, sued, suer, sues, supper, tali, tapped, tapping, thees, three, threes, tide,
  tides, tier, tiers, tiller, tillers, tired, toady, toot, tries, tsar, vail, vast, veer, veery, vest, waning, waring, warp, warps,
  weer, writs, wroth
`);
const names = wordList(`
  abby, addis, amarnath, anni, brooke, busse, casula, coen, crema, doro, fien, greta, hari, klara, loes, magno, mena, olaf, paris, rach,
  rael, reda, romo, satna, sattur, severa, trani
`);

export const wordsOfTheirOwn: ReadonlySet<string> = new Set([...english, ...names]);
