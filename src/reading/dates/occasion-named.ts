// Occasions of two words, whose single words mean anything: "board lunch", "race day", "awards night", "house warming".

import { pattern } from '../pattern.ts';
import { anyOccasion } from '../words/occasion-words.ts';

/** Said of an occasion, whosever it is: "the school formal", "a 60th birthday", "kitchen tea". */
export const occasionNamed = pattern(
  `(school (formal|ball|dance|prom|do|social|fete|disco|concert|play|production|musical|reunion|gala|fair)|(kitchen|high|garden|bridal) tea|tea party|(long|ladies|charity|cup day|race day|wedding|board|boardroom|corporate|club|committee|sponsors|members|alumni|presentation|farewell|retirement|leaving|anniversary|awards|awards day|hunt|gala|christmas|xmas|easter|melbourne cup|derby day|fundraising|civic|mayoral|council) (lunch|luncheon|dinner|brunch|breakfast|drinks|supper|do|tea)|<ordinal> birthday|birthday (party|do|bash|lunch|dinner|drinks)|(lunch|dinner|brunch|supper|breakfast) do|vow renewal|renewal of vows|bank holiday|match day|(naming|race|open|sports|speech|prize|cup|derby|ladies|founders|gala|heritage) (day|ceremony)|(awards|prize|casino|quiz|trivia|opening|presentation|graduation|debut|charity) (night|evening|nite)|(house|office|shop|studio) warming|(baby|bridal) shower|(book|product|album|store|collection|brand) launch|grand opening|(anzac|dawn|carol|church|funeral|civil|remembrance|thanksgiving|candlelight|graveside) (service|mass)|(hens|hen|stag|bucks|bachelorette|bachelor) (do|weekend|party|night|lunch|day)|(${anyOccasion}) (day|night|lunch|dinner|brunch|breakfast|drinks|tea|party|do|service|mass))`,
);
