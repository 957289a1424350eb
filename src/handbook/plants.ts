// The plants the handbook has figures for, under every name a studio may use. Words for what is done to them ("dried", "preserved") are told apart from names.

/** Canonical name to the other names and spellings of it, singular. */
const names: { readonly [plant: string]: readonly string[] } = {
  acacia: ['wattle', 'mimosa'],
  amaranth: ['amaranthus'],
  ammi: ['queen anne’s lace', "queen anne's lace", 'queen annes lace'],
  anemone: ['windflower'],
  banksia: [],
  'bunny tail': ['bunnytail', 'hare’s tail', "hare's tail", 'hares tail', 'lagurus'],
  carnation: ['spray carnation', 'dianthus'],
  cornflower: ['centaurea'],
  craspedia: ['billy button', 'billy ball'],
  celosia: ['cockscomb'],
  eucalyptus: ['gum leaf', 'gum', 'euc'],
  gardenia: [],
  'german statice': ['goniolimon'],
  'globe amaranth': ['gomphrena'],
  'globe thistle': ['echinops'],
  gypsophila: ['gyp', 'gypso', 'baby’s breath', "baby's breath", 'babys breath'],
  hypericum: ['hypericum berry'],
  larkspur: ['delphinium', 'consolida'],
  lavender: ['lavandula'],
  nigella: ['love in a mist', 'love-in-a-mist'],
  orchid: ['phalaenopsis', 'dendrobium', 'cymbidium', 'cattleya', 'singapore orchid'],
  pampas: ['pampas grass', 'cortaderia'],
  'poppy head': ['poppy', 'poppy pod', 'poppy seed head'],
  protea: [],
  ranunculus: ['ranunculi'],
  rose: ['spray rose', 'rosebud', 'rose bud'],
  ruscus: ['italian ruscus', 'israeli ruscus'],
  statice: ['sea lavender', 'limonium'],
  stephanotis: [],
  strawflower: ['straw flower', 'paper daisy', 'everlasting daisy', 'helichrysum', 'everlasting'],
  thistle: ['sea holly', 'eryngium'],
  waxflower: ['wax flower', 'geraldton wax'],
  wheat: ['wheat ear'],
  yarrow: ['achillea'],
};

const canonical = new Map<string, string>(
  Object.entries(names).flatMap(([plant, others]) => [[plant, plant], ...others.map((other) => [other, plant])] as [string, string][]),
);

const singular = (word: string): string =>
  word.endsWith('ies') ? `${word.slice(0, -3)}y` : /(ss|us|is)$/.test(word) ? word : word.replace(/s$/, '');

/** The handbook's name for a plant ("dried paper daisies" is strawflower); undefined when the handbook doesn't know it. */
export const plantNamed = (words: string): string | undefined => {
  const all = words
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  for (let length = all.length; length > 0; length -= 1) {
    for (let from = 0; from + length <= all.length; from += 1) {
      const part = all.slice(from, from + length);
      const found = canonical.get(part.join(' ')) ?? canonical.get([...part.slice(0, -1), singular(part.at(-1) ?? '')].join(' '));
      if (found) return found;
    }
  }
  return undefined;
};

/** Bought ready for the box, by its own name: "dried statice", "preserved eucalyptus", "silk rose". */
export const boughtReady = (words: string): boolean => /\b(dried|preserved|bleached|silk|faux|artificial|paper rose)\b/i.test(words);
