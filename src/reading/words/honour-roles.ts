// Who wears them at dinners, schools, clubs, balls and services, beside the people of a wedding. The person's own word stands as the name.
// They are known only where a list is plainly one of wearers: a chair is a chair, and a coach a bus, anywhere else.

import { wordList } from './word-list.ts';

const ones = wordList(`
  head girl, head boy, head prefect, deputy head girl, deputy head boy, head teacher, headteacher, house captain, captain, vice captain,
  club captain, team captain, school captain, sports captain, prefect, teacher, principal, deputy principal, deputy, vice principal, tutor,
  lecturer, professor, dean, student, pupil, graduate, valedictorian, salutatorian, scholar, prizewinner, prize winner, award winner,
  winner, finalist, nominee, inductee, medallist, honouree, honoree, recipient, presenter, host, co-host, speaker, guest speaker,
  keynote speaker, keynote, mc, emcee, compere, judge, chair, chairman, chairwoman, chairperson, vice chair, vice chairman, treasurer,
  secretary, president, vice president, past president, patron, trustee, director, managing director, ceo, board member, committee member,
  life member, member, founder, councillor, alderman, mayor, mayoress, town clerk, consort, lord mayor, deputy mayor, ambassador,
  veteran, cadet, officer, colonel, sergeant, chaplain, standard bearer, piper, bugler, drummer, coach, assistant coach, head coach,
  manager, team manager, player, umpire, referee, physio, deb, debutante, deb partner, partner, escort, page, page boy, flower girl,
  matron, matron of honour, matron of honor, nurse, doctor, lead, actor, actress, choreographer, conductor, soloist, musician, singer,
  usher, steward, sponsor, guest of honour, guest of honor, special guest, chief guest, honoured guest, vip guest, vip, dignitary, delegate, retiree, jubilarian, birthday girl, birthday boy,
  godparent, godmother, godfather, confirmand, communicant, catechist, elder, deacon, acolyte, eulogist, pallbearer, coffin bearer,
  widow, widower, celebrant, witness, prom king, prom queen, ball queen, queen, king, princess, attendant, class captain, form captain,
  year adviser, dux, proxime, receptionist, volunteer, organiser, organizer, helper, apprentice, bandmaster, band member, choir member
`);
// "chairmen" is "chairman" of several; "committee" is itself in any number.
const alike = wordList('committee, staff, crew, top table, board, choir');

// Two by themselves.
const pairs = wordList(
  "parents of the bride, parents of the groom, bride's parents, groom's parents, brides parents, grooms parents, bride parents, groom parents",
);

const manyOf = (one: string): string => {
  if (/ of (honour|honor)$/.test(one)) return one.replace(/^(\w+( \w+)?)( of )/, '$1s$3');
  if (/man$/.test(one)) return one.replace(/man$/, 'men');
  if (/y$/.test(one) && !/[aeiou]y$/.test(one)) return `${one.slice(0, -1)}ies`;
  return /(s|x|ch|sh)$/.test(one) ? `${one}es` : `${one}s`;
};

/** How many the words stand for by themselves; several may be any number. */
export type Stands = 1 | 2 | 'several';
const all: readonly (readonly [string, Stands])[] = [
  ...ones.filter((one) => !/chair$/.test(one)).map((one) => [manyOf(one), 'several'] as const), // "12 chairs" are sat on
  ...alike.map((word) => [word, 'several'] as const),
  ...ones.map((one) => [one, 1] as const),
  ...pairs.map((word) => [word, 2] as const),
];
/** Each word or words as typed. */
export const honourRoles: ReadonlyMap<string, Stands> = new Map(all);
export const longestRole = 4; // words
