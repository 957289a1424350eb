// Questions of the day that are no business of the bench, and trade words that mean something else in them.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { sundryHeads } from '../words/piece-words.ts';

const talkWords =
  /^(lunch|coffee|tea|needle|keys|key|van|vans|car|park|parking|weather|wifi|password|phone|charger|holiday|weekend|dinner|snips|scissors|glue|gun|bin|bins|door|code|kettle|milk|cake|dog|kids|shop|toilet|loo|heating|invoice|rent|landlord|cooler|fridge|umbrella|birthday|football|game|train|bus|lift|pizza|hoover|broom|apron|address|postcode|lights|alarm|radio|playlist|biscuits|plaster|plasters|takeaway|chips|sandwich|cuppa|pub|beer|light|lamp|toaster|microwave|dentist|doctor|gym|traffic|match|score|podcast|telly|printer|cat|baby|school|wine|breakfast|snow|rain|shift|knife|knives|secateurs|pliers|cutters|stapler|ruler|ladder|trolley|mug|coat|jumper|mic|mics|microphone|microphones)$/;

const dueThen = pattern(
  "(what's|whats|what is|what have we|what have we got|what do we have|what's all|anything) (on|due|booked|booked in|going out|to make|to do|leaving|left to do){0,2} (for|at|over|on)? (the|this|next) (weekend)",
);

export const smallTalk = (reader: Reader, start: number, end: number): boolean => {
  const words = reader.tokens.slice(start, end);
  // "do we have enough gyp in the cooler" is about the gyp.
  const goods = words.some((token) => token.means['ingredient'] !== undefined && token.text !== 'glue');
  // "whats on for the weekend" asks for what is due.
  const ofWork = dueThen.in(reader.tokens, start, end) !== undefined;
  // "done since lunch" says when; "what do I invoice them" asks for the total.
  // "what's gotta be out the door sat" asks what is due.
  const aside = (at: number): boolean =>
    (words[at]?.text === 'door' && words[at - 1]?.text === 'the' && words[at - 2]?.text === 'out') ||
    (words[at]?.text === 'weekend' && ofWork) ||
    (words[at]?.text === 'glue' && goods) ||
    (/^(since|before|after|by|till|until)$/.test(words[at - 1]?.text ?? '') &&
      /^(lunch|breakfast|tea|dinner)$/.test(words[at]?.text ?? '')) ||
    (words[at]?.text === 'invoice' && /^(i|we|to|should|you)$/.test(words[at - 1]?.text ?? ''));
  return words.some(
    (token, at) =>
      token.kind === 'word' && !aside(at) && talkWords.test(token.text) && !(goods && /^(cooler|fridge|van|bin)$/.test(token.text)),
  );
};

const ofPlace = /\b(unit|room|bay|door|block|gate|studio|shed|floor|level|suite|lot|locker) \d+\b/g;
/** Whether no number is said but that of a place: "who's got the key for unit 14". */
export const countsNothing = (said: string): boolean => !/\d/.test(said.replace(ofPlace, ''));

const otherThings = pattern('(<count> (more|new|of|<unlisted>){0,2} <things>|<everyday>)');
const mealTime = pattern('((since|before|after|by|till|until) (lunch|breakfast|tea|dinner|smoko)|(i|we|to|should) invoice)');
/** Asks about everyday things, or counts things that no list of the trade knows. */
export const everydayAsked = (reader: Reader, start: number, end: number): boolean =>
  otherThings.in(reader.tokens, start, end) !== undefined && mealTime.in(reader.tokens, start, end) === undefined;

const tradeTags = ['piece', 'taxName', 'material'];
const namesakes = /^(royal|inn|court|street|st|hotel|casino|pub|plaza)$/;
const own = /^(my|your|her|his|ur)$/;
const bodily = /^(wrist|wrists|hair|comb|combs|pocket|hairs)$/;

// People of the event: whoever asks about them is owed an answer, if only that this is not kept here.
const people = /^(client|client's|clients|bride|bride's|groom|couple|customer|customers|planner|venue|hotel|deposit)$/;

/** Whether the words name a piece, a tax or a material of ours, or people of the event: "my hair" and "halo light" do not. */
export const speaksOfTrade = (reader: Reader, start: number, end: number): boolean =>
  reader.tokens.slice(start, end).some((token, offset) => {
    if (people.test(token.text) && reader.tokens[start + offset + 1]?.means['piece'] === undefined) return true;
    if (!tradeTags.some((tag) => token.means[tag] !== undefined)) return false;
    const at = start + offset;
    if (token.means['piece'] === undefined) return true;
    const [before, after] = [reader.tokens[at - 1]?.text ?? '', reader.tokens[at + 1]?.text ?? ''];
    if (token.text === 'crown' && namesakes.test(after)) return false; // "my crown royal mug"
    return !(own.test(before) && bodily.test(token.text)) && !sundryHeads.has(after);
  });
