// What is said beside how many wear them and counts nobody: "names to come", "final list from the planner", "the bride says".

import { pattern } from '../pattern.ts';

export const besideHeads = [
  // "names to come", "she'll send the names"
  pattern(
    '(,|-|\\(|and|but|;){0,2} (the)? (names|list|who|roles|full list|name list|who is who) (and roles)? (is|are|will be)? (to come|to follow|tbc|tba|later|coming|will follow|following|still to come|to be confirmed|soon|tomorrow|on the way) (soon|later|tomorrow)? (\\))?',
  ),
  pattern(
    "(,|-|\\(|and|but|;){0,2} (she'll|he'll|they'll|i'll|we'll|ill|shell|theyll|she|he|they|i|she will|he will|they will|planner will|bride will|will|waiting on|waiting for) (to)? (send|sends|sending|email|get|give|forward|let you know|have|text)? (you|me|us)? (the|all the|all|on)? (names|list|who) (later|soon|tomorrow|through|over|tonight|on)? (\\))?",
  ),
  // "final list from the planner, 14 people wearing flowers"
  pattern(
    '(just|so|ok|right)? (got|have|had)? (the|a|her|their|his)? (final|finalised|finalized|latest|updated|full|new|confirmed|guest|wearers|wearer)? (list|numbers|count|tally|headcount|update) (is|in|came|through|here|back)? (in|through|back)? (from|off|by|per)? (the|our|my)? (planner|bride|groom|couple|client|coordinator|organiser|organizer|venue|mob|school|family)? (says|is|has)? (,|:|-)',
  ),
  pattern(
    '(the)? (<role>|planner|client|couple|coordinator|organiser|school|family) (says|said|confirmed|confirms|has confirmed) (that)? (,|:|-)?',
  ),
];
