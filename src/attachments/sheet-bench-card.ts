// The bench card on paper: recipe beside a frame for a photo, then the numbered steps, then the cautions.

import { cautionWords } from '../handbook/cautions.ts';
import type { SheetCard } from '../handover/sheets.ts';
import { duration } from '../reply/words/dates.ts';
import { capital } from '../values/capital.ts';
import type { SheetWriter } from './sheet-writer.ts';

const photo = { width: 190, height: 150 };

/** One card, begun on its own page. */
export const drawBenchCard = (writer: SheetWriter, card: SheetCard, eventLine: string): void => {
  writer.sheet(capital(card.one), eventLine);
  const top = writer.y();
  const left = writer.width - photo.width - 18;
  writer.box(writer.width - photo.width, top, photo.width, photo.height, 'dashed');
  writer.put('photo of the first one made', writer.width - photo.width + 10, top + photo.height - 20, { size: 9, width: photo.width - 20 });
  const counts = card.material === undefined ? `${card.count} to make` : `${card.count} to make · ${card.material}`;
  writer.text(counts, { size: 12, face: 'bold', width: left });
  writer.down(2);
  writer.text(`${duration(card.minutes)} each · ${duration(card.minutes * card.count)} in all`, { size: 11, width: left });
  writer.text(`Worn: ${[card.worn.side, card.worn.dissent].filter((words) => words !== '').join('; ')}`, { size: 11, width: left });
  writer.down(8);
  writer.text('Recipe, for one', { size: 12, face: 'bold', width: left });
  writer.down(2);
  if (card.recipe.length === 0) writer.text('no recipe yet', { size: 11, width: left });
  for (const line of card.recipe) {
    const name = { size: 11, x: 92, width: left - 92 };
    writer.ensure(writer.heightOf(line.ingredient, name));
    writer.put(line.amount, 0, writer.y(), { size: 11, face: 'bold', width: 88 });
    writer.text(line.ingredient, name);
  }
  if (writer.y() > top && writer.y() < top + photo.height) writer.down(top + photo.height - writer.y());
  writer.down(14);

  card.steps.forEach(({ step, note }, index) => {
    const noteStyle = { size: 10, x: 26 };
    writer.ensure(15 + (note === '' ? 0 : writer.heightOf(note, noteStyle)));
    writer.put(`${index + 1}`, 0, writer.y(), { size: 11.5, face: 'bold', width: 24 });
    writer.text(step, { size: 11.5, face: 'bold', x: 26 });
    if (note !== '') writer.text(note, noteStyle);
    writer.down(4);
  });
  const cautions = card.cautions.map(cautionWords);
  if (cautions.length === 0) return;

  const style = { size: 9.5 };
  writer.ensure(16 + writer.heightOf(cautions[0] ?? '', style)); // the heading keeps its first caution
  writer.down(4);
  writer.rule();
  writer.down(4);
  writer.text('Take care', { size: 11.5, face: 'bold' });
  for (const caution of cautions) {
    writer.ensure(writer.heightOf(caution, style));
    writer.text(caution, style);
    writer.down(3);
  }
};
