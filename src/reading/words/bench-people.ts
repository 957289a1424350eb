// Who stands at the bench, as studios call them.

import { wordList } from './word-list.ts';

/** People at the bench. */
export const benchPeople = wordList(`
  of us, people, persons, ppl, person, freelancer, freelancers, florist, florists, helper, helpers, pairs of hands, pair of hands,
  hands, staff, casuals, casual, juniors, junior, trainee, trainees, extra hands, pax, peeps, bodies, assistants, assistant, workers,
  worker, apprentice, apprentices, girls, ladies, guys, lads, students, student, makers, maker, boys, karigars, karigar, temps, temp,
  extras, sets of hands, designers, designer, part timers, part-timers, seniors, senior, team, us, volunteers, artisans, men, women,
  folk, crew
`);

/** Family that helps at the bench, as alternatives. */
export const familyAtBench = 'mum|mam|mom|dad|sister|brother|husband|wife|daughter|son|partner';
