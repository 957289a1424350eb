// What flowers do by themselves: "do cornflowers hold up a full day out of water at all", "which flowers last longest". Asked with no mark behind, and no order; "do cornflowers for the bouts" asks nothing.

import { anyIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import type { Forms } from './question-pattern.ts';

const flowers = '(the|these|those|fresh|dried|cut|all|most|any|some|your|our)? (<ingredient>|<piece>|flowers|petals|blooms|stems|foliage)';
const ever = '(ever|still|really|always|usually|even|just|not|actually|generally|normally|also|all)?';
const behind =
  '(out|in|without|for|til|till|to|through to|long|longer|longest|well|<duration>|a|an|all|overnight|on|at|if|more|until|past|with|when|once|as|ok|okay|better|best|through|any|much|over)';
const tillWhen =
  '(til|till|until|through to|overnight|out of water|without water|<duration>|long enough|ok if|ok in|in the (fridge|cooler|heat|sun|van|coolroom|cold|box)|if (i|we) (cut|wire|make|tape|glue|pick|box|spray|condition|buy|get|strip|do))';
const keeps = `((hold|last|keep|survive) (up|out|ok|fresh)? ${tillWhen}|(wilt|droop|flop) ${tillWhen})`;
const does = `(hold up|make it (to|til|till|until|through)|hold if|hold (their|its|on|out|${behind})|(last|stand|keep|stay|travel|dry|freeze|survive) ${behind}|(wilt|survive|droop|flop|brown|bruise|fade|cope|shed|rehydrate|perk up|recover|shrivel|crumble|scorch|suffer|discolour|discolor|sulk|sweat|bleed|stain|yellow)|go (brown|limp|floppy|off|mouldy|soft|over|yellow|crispy|see through|without|<duration>|a)|(need|like|hate|mind|want|take|handle|tolerate) (water|a drink|conditioning|hydrating|being|the (heat|cold|fridge|cooler|sun)|heat|cold|glue|spray|hairspray|wiring|searing|warmth|light|<duration>)|do (well|ok|okay|badly)|drop (their|petals|pollen)|dry)`;
const asks = '(do|does|will|would|can|could|might|should|did)';
const forms = [
  `(how|how well|how long|why|when)? ${asks} ${flowers} ${ever} ${does} <any>{0,10}`,
  // "will they keep til sat"
  `(how|how well|how long)? (do|will|would|can|could|might) (they|these|those|it all) ${ever} ${keeps} <any>{0,10}`,
  '(which|what) (<any>)? (flowers|blooms|stems|foliage|ones|flower|<ingredient>) <any>{0,2} (last|lasts|hold|holds|wilt|wilts|dry|dries|survive|survives|travel|travels|bruise|bruises) (up|out)? <any>{0,2} (best|longest|well|ok|out of water|least|quickest|fastest|worst)',
  '(what|which) (lasts|holds|holds up|keeps|travels|dries|wilts|survives|bruises) (up|out)? (the)? (best|longest|well|ok|least|quickest|fastest|worst) <any>{0,5}',
  `(anyone|anybody|someone|do you|does anyone|does anybody|you|u|ye|any of you) know (if|whether|how|why|how long|how well) ${flowers} ${ever} <any>{1,10}`,
  `(any idea|no idea|any ideas|wondering) (if|whether|how|why|how long|how well) ${flowers} ${ever} <any>{1,10}`,
  `(can|could|should|do|does) (i|we|you|u|one|anyone) (ever)? (freeze|press|dye|refrigerate|microwave|bleach|glycerine|dip dye|rehydrate|revive|hairspray) ${flowers} <any>{0,6}`,
];
const patterns = forms.map((source) => pattern(source));
const opening = pattern(`(so|and|ok|hey|hi|,|quick|question|q|-|:|btw|random){0,4} (${forms.slice(0, 7).join('|')})`);

/** What is asked so is of no event: "other". */
export const ofFlowers: Forms = [['other', forms]];

/** Whether the part asks so, mark or not. */
export const asksOfFlowers = ({ tokens }: Reader, { start, end }: Part): boolean =>
  anyIn(patterns, tokens, start, end) && opening.at(tokens, start, end) !== undefined;
