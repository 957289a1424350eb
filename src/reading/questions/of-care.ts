// How finished pieces are kept and where they go: "do these need to go in the fridge overnight", "can preserved ones go in the cooler?", "do wrist
// corsages need misting". Asked with no mark behind, and of no event: nobody here can tell, and that is said.

import { anyIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import type { Forms } from './question-pattern.ts';

const first = '(where|when|how|why|how long|what time|which way)?';
const ask = '(do|does|did|can|could|will|would|should|shall|must|might|is|are|were|have|has)';
const ever = '(ever|still|really|always|usually|even|just|not|actually|also|all|both|only|already)';
const owing = '(need to|needs to|have to|has to|got to|supposed to|meant to|want to|be able to)?';
// "these" with no name behind them lie on the bench; "they" may be anybody, and needs plainer words.
const named = '(the|these|those|our|any|all|your|my)? (<count>)? (<material>)? <piece>';
const ones = `((the|these|those|our|any|all)? (<material>|finished|made|wired|boxed) ones|these|those|${named})`;
const cold = '(fridge|fridges|cooler|coolers|coolroom|cool room|cold room|cold|freezer|cold store|chiller|walk in)';
const bare = '(outside|overnight|indoors|outdoors|inside|flat|upright|separately|together)';
const place = `(${bare}|(the|a|an|some|our|my|your|damp|wet|fresh|their|own){0,2} (${cold}|water|bucket|buckets|box|boxes|bag|bags|tray|trays|tissue|cellophane|cello|sun|shade|dark|garage|shed|car|van|rain|heat|tissue paper|lid|drink|heater|window|post))`;
const into = '(in|into|on|under|near|by|out of|without|with|up|to)';
const care =
  '(misting|misted|spraying|sprayed|watering|watered|boxing|boxed|bagging|bagged|wrapping|wrapped|sealing|sealed|chilling|chilled|conditioning|conditioned|covering|covered|hanging|hung|kept|keeping|stored|storing|refreshing|refreshed|hydrating|hydrated|steaming|steamed)';
const cared = `(need|needs|want|like|require|be|get|been|being|to be|getting) (to)? (be|get)? (a)? (${care}|mist|spray|misting over)`;
const goes =
  '(go|going|be|sit|live|stay|keep|travel|last|hang|survive|cope|fit|stop|wait|stand|stored|kept|need|want|like|ok|okay|alright|fine|safe|happy|better|best)';
const forms = [
  `${first} ${ask} ${ones} ${ever}{0,2} ${owing} ${cared} <any>{0,8}`,
  `${first} ${ask} ${ones} ${ever}{0,2} ${owing} ${goes} (to)? (go|be|sit|live|stay|travel|stored|kept|left|ok|okay|alright|fine|better|best){0,2} ${into}? ${place} <any>{0,8}`,
  `${first} ${ask} ${ones} ${ever}{0,2} ${owing} (sit|stay|be left|survive|last|cope|keep|stand) (out|outdoors|in the warm|in the heat) <any>{0,6}`,
  `${first} (is|are|were) ${ones} ${ever}{0,2} ${into} ${place} <any>{0,6}`,
  `(where|how) ${ask} ${ones} ${ever}{0,2} ${owing} (go|going|live|sit|be kept|be stored|get kept|stay|kept|stored|hang|travel) <any>{0,4}`,
  `(where|how) (am|are|do|should|shall|can) (i|we|you) ${owing} (drop|dropping|put|putting|take|taking|leave|leaving|store|storing|keep|keeping|pack|packing) (these|those) <any>{0,4}`,
  `${first} (do|will|would|should|can|could|might) they ${ever}{0,2} ${owing} ${cared} <any>{0,6}`,
  `${first} (do|will|would|should|can|could|might) they ${ever}{0,2} ${owing} (need|go|sit|live|stay|keep|be|last|survive|cope) (to)? (go|be|sit|live|stay|kept|ok|okay|alright){0,2} ${into}? (the|a|some|their|fresh){0,2} (${cold}|water|bucket|buckets|tissue|overnight) <any>{0,6}`,
  `${first} ((do|should|shall|must) (i|we|you|u)|(can|could) (i|we)) ${ever}{0,2} ${owing} (mist|spray|chill|water|seal|refrigerate|steam|hydrate) ${ones} <any>{0,8}`,
  `${first} ((do|should|shall|must) (i|we|you|u)|(can|could) (i|we)) ${ever}{0,2} ${owing} (box|bag|wrap|cover|store|keep|leave|put|stick|pop|hang) ((the|our|my)? (<material>)? (<piece>|ones)|these|those) (all|up)? ${into}? ${place} <any>{0,6}`,
  `(is|would) it (be)? (ok|okay|alright|fine|safe|bad|best|better) (to|if i|if we) (leave|keep|put|store|stick|mist|spray|box|hang|wrap|pop|chill) ${ones} <any>{0,6}`,
  `(is|would) it (be)? (ok|okay|alright|fine|safe|bad|best|better) if (they|${ones}) (are|go|sit|live|stay|get) <any>{0,3} ${place} <any>{0,6}`,
  `(how|where|what|when) (to|(do|should|shall|can|must) (we|i|you)) (store|keep|mist|spray|hang|transport|chill|refresh|condition) (these|those|the <piece>) <any>{0,6}`,
];
const patterns = forms.map((source) => pattern(source));
const opening = pattern(
  `(so|and|ok|hey|hi|,|quick|question|q|-|:|btw|sorry|also|anyone know if|any idea if|do we know if|does anyone know if|wondering if){0,4} (${forms.join('|')})`,
);

/** What is asked so is of no event: "other". */
export const ofCare: Forms = [['other', forms]];

/** Whether the part asks so, mark or not. "Do the crowns first" and "can you box these" ask for work. */
export const asksOfCare = ({ tokens }: Reader, { start, end }: Part): boolean =>
  anyIn(patterns, tokens, start, end) && opening.at(tokens, start, end) !== undefined;
