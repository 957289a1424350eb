// The cautions, one row each: what calls for it, what to say, and who says so.

import type { CautionRow } from './caution-row.ts';
import { commonPractice } from './sources.ts';
import { careSources as from } from './sources-care.ts';

const bench = ['bench card'] as const;

export const cautionRows: readonly CautionRow[] = [
  {
    id: 'magnet',
    when: [{ fixings: ['magnet'] }, { wearers: ['implant'] }],
    wording:
      'Magnets can disturb pacemakers and other implants; the usual rule is to keep them at least 15 cm away, and a left lapel is nearer than that. Ask each wearer, offer a pin or a wrist piece instead, and let their doctor or device clinic have the last word.',
    sources: [from.magnetsFda, from.magnetsIcd],
    notAdvice: 'medical',
    shownOn: ['bench card', 'pin-on sheet', 'packing list'],
  },
  {
    id: 'magnet-child',
    when: [{ fixings: ['magnet'], wearers: ['child'] }],
    wording:
      "Keep magnets off children's pieces and count the loose ones back in; rules on small magnets differ by country. If a child may have swallowed one, get medical help at once.",
    sources: [from.magnetsAcl, from.magnetsCfr],
    notAdvice: 'medical',
    shownOn: ['bench card', 'pin-on sheet'],
  },
  {
    id: 'pin-child',
    when: [{ fixings: ['pin'], wearers: ['child'] }],
    wording:
      'Small children usually get no loose pin: sew the piece on, tie it with ribbon, or have an adult pin it and take it off. Rules on small parts for under-threes differ by country, so check yours.',
    sources: [from.smallParts],
    notAdvice: 'legal',
    shownOn: ['bench card', 'pin-on sheet'],
  },
  {
    id: 'wire-ends',
    when: [{ fixings: ['wire'] }],
    wording: 'Cut wire ends are sharp: cut them square and cover every one with tape. Protect your eyes when you shorten wire or pins.',
    sources: [from.wireEnds],
    shownOn: bench,
  },
  {
    id: 'allergy',
    when: [{ wearers: ['allergy'] }],
    wording:
      'Ask the wearer which plants to leave out, and keep their piece apart from those. If they are unsure what is safe, their doctor decides.',
    sources: [commonPractice],
    notAdvice: 'medical',
    shownOn: ['bench card', 'pin-on sheet'],
  },
  {
    id: 'sap',
    when: [{ plantHazard: 'sap' }],
    wording:
      'The white sap of {plants} can badly hurt eyes and skin: wear gloves and eye protection. If sap gets in an eye, rinse it with plenty of water at once and see a doctor.',
    sources: [from.gardenPlants],
    notAdvice: 'medical',
    shownOn: bench,
  },
  {
    id: 'skin',
    when: [{ plantHazard: 'skin' }],
    wording:
      '{plants} can bring on a rash in people who handle them often. Gloves are the usual care; a rash that stays is one for a doctor.',
    sources: [],
    notAdvice: 'medical',
    shownOn: bench,
  },
  {
    id: 'poisonous',
    when: [{ plantHazard: 'poisonous' }],
    wording:
      "{plants} can do harm if eaten: wash your hands afterwards, and keep the flowers off food and small children's pieces. If someone may have eaten any, get medical help at once and take a piece of the plant along.",
    sources: [from.gardenPlants],
    notAdvice: 'medical',
    shownOn: bench,
  },
  {
    id: 'pollen',
    when: [{ plantHazard: 'pollen' }],
    wording:
      'Pollen from {plants} can set off hay fever or asthma in some people at the bench. Keep the room aired, and see a doctor if anyone wheezes.',
    sources: [from.floristAsthma],
    notAdvice: 'medical',
    shownOn: bench,
  },
  {
    id: 'pollen-disputed',
    when: [{ plantHazard: 'pollen disputed' }],
    wording: 'Sources disagree on whether {plants} sets off allergies. Leave it out for anyone who reacts; a doctor can test for it.',
    sources: [],
    notAdvice: 'medical',
    shownOn: bench,
  },
  {
    id: 'scent',
    when: [{ plantHazard: 'scent' }],
    wording: 'The scent of {plants} troubles some people. Ask the wearer before you use it.',
    sources: [],
    shownOn: bench,
  },
  {
    id: 'dried-dust',
    when: [{ materials: ['dried', 'mixed'] }],
    wording:
      'Dust from dried flowers can set off asthma. Work with the window open, clear up with a damp cloth, and see a doctor if anyone wheezes.',
    sources: [from.driedFlowerAsthma, from.floristAsthma],
    notAdvice: 'medical',
    shownOn: bench,
  },
  {
    id: 'silica',
    when: [{ methods: ['silica gel'] }],
    wording:
      "Silica gel dust irritates the nose, lungs and eyes: pour it slowly, and wear a dust mask and goggles. Follow the maker's safety sheet.",
    sources: [from.silica],
    notAdvice: 'medical',
    shownOn: bench,
  },
  {
    id: 'silica-blue',
    when: [{ methods: ['silica gel'] }],
    wording:
      'Blue indicating silica gel holds cobalt chloride, which is classed as able to cause cancer: buy a kind without it. Ask your local waste office how to be rid of any you have.',
    sources: [from.silica],
    notAdvice: 'medical',
    shownOn: bench,
  },
  {
    id: 'borax',
    when: [{ methods: ['borax'] }],
    wording:
      "One health authority advises against borax in home crafts, above all near children and anyone pregnant. Dry another way, or follow the maker's safety sheet and your local rules.",
    sources: [from.borax],
    notAdvice: 'medical',
    shownOn: bench,
  },
  {
    id: 'hot-glue',
    when: [{ methods: ['hot glue'] }],
    wording:
      'Hot glue burns: about 120 °C from a low-heat gun, 190 °C or more from a high-heat one. Keep fingers and children away, unplug it when you leave, and get medical help for a bad burn.',
    sources: [from.hotGlue],
    shownOn: bench,
  },
  {
    id: 'flame',
    when: [{ materials: ['dried', 'preserved', 'mixed', 'artificial'], circumstances: ['candles'] }],
    wording:
      'Dried and artificial flowers burn easily: keep them well away from candles. Published distances run from 12 in (30 cm) to 4 ft (1.2 m); the venue and the fire authority decide.',
    sources: [from.candlesDried, from.candlesFoot, from.candlesFourFeet, from.fireCode],
    notAdvice: 'legal',
    shownOn: ['pin-on sheet', 'packing list'],
  },
  {
    id: 'foraging',
    when: [{ circumstances: ['foraged'] }],
    wording:
      "Pick with the landowner's leave, never uproot, and take little: one code says at most 1 in 20. Some sites forbid all picking, so check your local rules.",
    sources: [from.pickingCode],
    notAdvice: 'legal',
    shownOn: bench,
  },
  {
    id: 'protected',
    when: [{ circumstances: ['foraged'] }],
    wording:
      "Some wild plants are protected, and picking or selling them can need a licence. Check your country's or state's list, and leave what you can't name.",
    sources: [from.pickingCode, from.protectedNsw, from.protectedWa],
    notAdvice: 'legal',
    shownOn: bench,
  },
  {
    id: 'invasive',
    when: [{ plantHazard: 'invasive' }],
    wording: 'English {plants} may not be sold or used in some places. Check your local list of invasive plants.',
    sources: [],
    notAdvice: 'legal',
    shownOn: bench,
  },
  {
    id: 'border',
    when: [{ circumstances: ['border'] }],
    wording:
      'Flowers that cross a border, fresh or dried, can need a permit or a plant health certificate. Ask the plant health office of the place they are going to before you pack.',
    sources: [from.borderFresh, from.borderDried],
    notAdvice: 'legal',
    shownOn: ['packing list'],
  },
  {
    id: 'tax',
    when: [{ circumstances: ['tax'] }],
    wording: 'The tax here is arithmetic at the rate shown. Ask your accountant or tax office which rate and basis are yours.',
    sources: [commonPractice],
    notAdvice: 'tax',
    shownOn: [],
  },
  {
    id: 'wages',
    when: [{ circumstances: ['wages'] }],
    wording: 'Minimum and award wages differ by place, age and date. Check your local rate with the official body or your accountant.',
    sources: [commonPractice],
    notAdvice: 'legal',
    shownOn: [],
  },
];
