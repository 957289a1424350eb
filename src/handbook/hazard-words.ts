// Words of a message that tell of a hazard nobody puts in a recipe: how pieces are held on, how plants are dried, where the flowers go.
// Only plain words count, and "no candles" counts as none. What people wear by custom is not here: see wearing.ts.

export const hazards = ['magnet', 'implant', 'allergy', 'silica gel', 'borax', 'hot glue', 'foraged', 'candles', 'border'] as const;
export type Hazard = (typeof hazards)[number];

const words: Readonly<Record<Hazard, RegExp>> = {
  magnet: /\bmagnet(s|ic)?\b/g,
  // Pacemakers and defibrillators: the sources of the caution. The other devices: common practice, no source; asking once too often costs nothing.
  implant:
    /\b(pacemakers?|(cochlear|heart|ear|brain|nerve) implants?|icds?|defibrillators?|insulin pumps?|neuro-?stimulators?|nerve stimulators?|loop recorders?|heart (monitors?|devices?)|brain shunts?|vp shunts?)\b/g,
  allergy: /\b(allerg(y|ies|ic)|hay ?fever|asthma(tic)?)\b/g,
  'silica gel': /\bsilica\b/g,
  borax: /\bborax\b/g,
  'hot glue': /\b(hot|melt)[ -]?glued?\b|\bglue ?(guns?|sticks?)\b/g,
  foraged: /\b(forag(ed?|ing|er)|hedgerows?|wild[ -]?(picked|gathered|flowers from))\b|\bpicked (in|from) the wild\b/g,
  candles: /\b(candle(s|light|lit|sticks?)?|tea ?lights?|votives?|naked flames?|open fires?|fire ?pits?|sparklers?)\b/g,
  border: /\b(customs|abroad|overseas|export(s|ed|ing)?|phytosanitary|(across|over|cross(es|ing)?) (a|the) ([a-z]+ )?border)\b/g,
};

const denied =
  /\b(no|not|non|never|without|instead of|rather than|drop|skip|lose|ditch|scrap|forget|swap|led|battery|fake|un)[ -]*(any |the |real |[a-z]+ing )?$/;

// Most words tell of none, which one look says.
const any = new RegExp(
  Object.values(words)
    .map(({ source }) => source)
    .join('|'),
);

/** The hazards these words tell of, in the order of the list. A word that is denied ("no candles", "LED candles") tells of none; a health word always counts. */
export const hazardsIn = (text: string): readonly Hazard[] => {
  const plain = text.toLowerCase();
  if (!any.test(plain)) return [];
  return hazards.filter((hazard) => [...plain.matchAll(words[hazard])].some((match) => isHealth(hazard) || !isDenied(plain, match.index)));
};

/** Whether these words tell of somebody's health. */
export const tellsOfHealth = (text: string): boolean => hazardsIn(text).some(isHealth);

/** Hazards these words take back: "no magnets after all". What is denied for one wearer ("no magnet for grandad") stands for the others. */
export const hazardsDenied = (text: string): readonly Hazard[] => {
  const plain = text.toLowerCase();
  return hazards.filter((hazard) => {
    const matches = isHealth(hazard) ? [] : [...plain.matchAll(words[hazard])];
    const forOne = (match: RegExpExecArray): boolean =>
      /^\s+(for|on|near|with|to)\b(?! (us|all|any|everyone))/.test(plain.slice(match.index + match[0].length));
    return matches.length > 0 && matches.every((match) => isDenied(plain, match.index) && !forOne(match));
  });
};

const isDenied = (plain: string, at: number): boolean => denied.test(plain.slice(Math.max(0, at - 24), at));

/** "Not allergic to anything" is rare, and missing the other is worse. */
const isHealth = (hazard: Hazard): boolean => hazard === 'implant' || hazard === 'allergy';
