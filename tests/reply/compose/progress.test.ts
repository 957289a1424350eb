// What is made of a kind that nobody ordered: kept and said, never lost; and what cannot be broken or left is refused with a sentence.

import { expect, it } from 'vitest';
import { replyTo } from '../../support/plain-studio.ts';

const order = ['11 buttonholes at 14 inc vat, dried, event 14 march'];

it('says what was made and never ordered, until it is', async () => {
  expect(await replyTo([...order, 'did 4 corsages'])).toMatch(
    /^0 of 11 buttonholes made, 11 left; 4 corsages made and none ordered: add them or correct me\./,
  );
  expect(await replyTo([...order, 'did 4 corsages', 'add 6 corsages at 28', 'did 3 buttonholes'])).toMatch(
    /^3 of 11 buttonholes made, 8 left; 4 of 6 corsages made, 2 left\./,
  );
});

it.each(['2 crowns snapped', '3 crowns left'])('has none of what “%s” tells of', async (said) => {
  expect(await replyTo([...order, said])).toContain('There is no flower crown in this order. It has: buttonhole.');
});

it('says the day back, and that its year was assumed, before any piece is ordered', async () => {
  expect(await replyTo(['dried, event 14 march'])).toMatch(/^Noted: event Sun 14 March 2027 \(year assumed\), dried\./);
});

it('goes on with the next kind in the same sentence', async () => {
  expect(await replyTo(['3 buttonholes at 14 inc vat, 2 corsages at 28, 1 crown at 60', 'corsages done', 'crown done'])).toMatch(
    /^0 of 3 buttonholes made, 3 left; all 2 corsages made; the flower crown is made\./,
  );
});
