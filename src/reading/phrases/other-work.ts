// Flower work that is not worn, and numbers that belong to someone else's business: read so that nobody else reads them, and said to nobody.

import { clippedHour } from '../dates/clipped-hours.ts';
import { hourRunTogether } from '../dates/run-together.ts';
import { otherWorkAlone } from '../held/other-work-alone.ts';
import { nextWork, speaksOfPrice, workAhead } from '../held/work-ahead.ts';
import { costsOthers } from '../order/no-prices.ts';
import { rowWithOthers } from '../order/row-with-others.ts';
import { beginsAt, pattern } from '../pattern.ts';
import type { Finding, Phrase, Reader } from '../phrase.ts';

const street = pattern('<plain> <word>{1,2} (street|road|rd|lane|avenue|ave|close|drive|crescent|terrace)');
const others = [
  '(<count> (nos|no|pcs|pc|units|numbers)?|a|an|one)? <filler>{0,2} <other> ((:|-|x)? <count> (nos|pcs|pc|units))?',
  '(bay|room|rm|table|gate|level|unit|door|code|invoice|inv|order|po|ticket|flight|platform|page|channel|route|junction|lot|locker|booking|ref|reference|account|acct|docket|flat|apt|suite|floor|aisle|shelf|row|line|post code|postcode|bus|coach|minibus|shuttle|pin|passcode|password|wifi|tel|phone|ph|mob|mobile|call|ring|ext|extension|zone|dock|stall|lane|track|size|version|chapter|episode|season) (no|number|num|num.|code|is|was|#|:|.|-){0,3} (<number>)',
  '(,|-) (ballroom|hall|lounge|marquee|pavilion|theatre|chapel) <count>', // "at the hall 8.30" tells an hour
  '(no|number) (.)? <plain> (<word>)? (street|st|road|rd|lane|avenue|ave|close|drive)',
  '(a|an|the)? <count> (-)? (piece|pc) (wedding|jazz|ceilidh|brass|string|covers|live|function)? (band|suite|orchestra|choir|ensemble|outfit|quartet)',
  "(band|band's|orchestra|choir|ensemble|musicians) (is|are|'s|was)? (a|an) <count> (-)? piece",
  '<temperature>',
  '<code> (-)? (<plain>|<code>){0,4}',
].map((source) => pattern(source));
const forms = [...others, street];

// "22 bouts, 1 bridal bouquet: £16 / £120": the bouquet's price; where the row is not as long as the list, none of it is sure.
const pricesInRow = ({ tokens }: Reader): readonly Finding[] => {
  const row = rowWithOthers(tokens);
  if (row === undefined) return [];
  const placed = row.others.length > 0;
  return (placed ? row.others : row.places).map((index) => ({
    start: index,
    end: index + 1,
    held: true,
    ...(placed ? { apart: true } : {}),
  }));
};

const find = (reader: Reader): Finding[] => {
  const findings: Finding[] = [];
  const ordered = speaksOfPrice(reader.tokens);
  const worked = reader.facts.some(({ fact }) => fact === 'made');
  for (let index = 0; index < reader.tokens.length; index++) {
    const rest = ordered
      ? undefined
      : (workAhead(reader.tokens, index) ??
        (worked && !/^(need|needs|want|wants|wanted|order|add)$/.test(reader.tokens[index - 1]?.text ?? '')
          ? nextWork(reader.tokens, index)
          : undefined));
    if (rest !== undefined) {
      findings.push({ start: index, end: rest.end, held: true });
      index = rest.end - 1;
      continue;
    }
    if (costsOthers(reader.tokens, index)) {
      findings.push({ start: index, end: index + 2 });
      index += 1;
      continue;
    }
    if (!beginsAt(forms, reader.tokens, index)) continue;
    for (const form of forms) {
      const match = form.at(reader.tokens, index, reader.tokens.length);
      if (match === undefined) continue;
      // "ceremony at 0930", "sat feb 20 11a"
      const code = reader.tokens[index]?.number?.form === 'code';
      if (code && (hourRunTogether(reader.tokens, index) ?? clippedHour(reader.tokens, index)) !== undefined) continue;
      // "12 bouts street party sat" is no address.
      if (form === street && reader.tokens.slice(index, match.end).some(({ means }) => means['piece'] !== undefined)) continue;
      // "out the door 9am": when they leave.
      if (reader.tokens[index]?.text === 'door' && reader.tokens[index - 2]?.text === 'out') continue;
      // "prom order: 3 bouts" counts bouts.
      const next = reader.tokens[match.end];
      // "75 bouts, unit 7.80 eur" prices a unit; "unit 4" is a place.
      if (
        /^(unit|flat|order|line|level|size)$/.test(reader.tokens[index]?.text ?? '') &&
        reader.tokens[match.end - 1]?.number?.form === 'money'
      )
        continue;
      // "9 crowns, child size 42.50 ea" prices them.
      if (reader.tokens[match.end - 1]?.number !== undefined && reader.tokens[match.end]?.means['each'] !== undefined) continue;
      // "buttonholes x 22 and the bouquets", "900 covers a bridal bouquet": the number is not theirs.
      if (
        reader.tokens[index]?.number !== undefined &&
        /^(and|plus|&|\+|n|covers?|covering|gets|buys|to|is|includes|incl)$/.test(reader.tokens[index + 1]?.text ?? '')
      )
        continue;
      // "12 corsages, 6 pin 28, 6 wrist 32": how they are worn.
      if (reader.tokens[index]?.text === 'pin' && reader.tokens[index - 1]?.number?.form === 'plain') continue;
      const counted = reader.tokens[match.end - 1]?.number?.form === 'plain';
      // "new order - 9 x bouts"
      if (counted && next?.text === 'x' && reader.tokens[match.end + 1]?.means['piece'] !== undefined) continue;
      if (counted && next !== undefined && (next.means['piece'] !== undefined || next.means['material'] !== undefined)) continue;
      findings.push({ start: index, end: match.end });
      index = match.end - 1;
      break;
    }
  }
  const taken = (index: number): boolean => findings.some(({ start, end }) => start <= index && index < end);
  const alone = otherWorkAlone(reader).filter((index) => !taken(index));
  return [...findings, ...pricesInRow(reader), ...alone.map((index) => ({ start: index, end: index + 1, held: true }))];
};

export const otherWork: Phrase = { name: 'other work', examples: [], find };
