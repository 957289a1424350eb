// What an occasion is called, once for all who ask whether a day, an hour or a sentence is of one: its day, its "weddings on the 8th", its own hour.

import { withoutOwner } from '../text/owners.ts';
import { wordList } from './word-list.ts';

/** Goes before another occasion or beside it: the event's only where none of the others is named. */
export const besideOccasions: readonly string[] = wordList(`
  hens, hen, stag, stags, bucks, bachelor, bachelorette, shower, engagement, mehndi, mehendi, sangeet, haldi, roka, tilak, roce, civil, registry,
  removal, viewing, vigil
`);

/** Said of hardly anything but an occasion. */
export const occasions: readonly string[] = wordList(`
  wedding, ceremony, gala, prom, debs, deb, formal, christening, baptism, naming, dedication, funeral, memorial, requiem, burial, cremation, wake, reception,
  anniversary, communion, confirmation, matric, graduation, grad, grads, homecoming, hoco, quince, quinceanera, quinceañera, mitzvah, barmitzvah,
  batmitzvah, banquet, convocation, cotillion, fete, fundraiser, nikah, nikkah, walima, valima, baraat, barat, puja, pooja, shaadi, nuptials,
  elopement, handfasting, luncheon, pageant, regatta, recital, festival, premiere, soiree, races, expo, retirement, jubilee, ordination, inauguration,
  lobola, umembeso, muhurtham, muhurtam, muhurthum, muhurat, muhurth, kalyanam, karaj, pheras, chuppah, solemnisation, solemnization, farewell, unveiling, housewarming, awards, prizegiving, prize-giving, dinner-dance, supper-dance, party, function, event,
  reunion, investiture, valedictory
`);

/** All of them as one choice of a pattern. */
export const anyOccasion = [...occasions, ...besideOccasions].join('|');
const named = new Set([...occasions, ...besideOccasions]);

/** "wedding", "prom's" */
export const isOccasion = (text: string): boolean => named.has(withoutOwner(text));
