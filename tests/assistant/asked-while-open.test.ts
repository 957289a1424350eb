// While a question of ours is open a question of theirs answers nothing; of two days that fit it is asked again.

import { expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const fresh = '12 bouts at 14 inc, fresh, sat 6 march';
const which = 'Which day do you mean';

it('stores no hands at “who’s on friday?”', async () => {
  const talk = [fresh, '3 of us friday 9 to 1', "who's on friday?"];
  expect(await replyTo(talk)).not.toContain('as you said');
  expect(await replyTo([...talk, 'the 5 march one'])).toContain('At the bench on Fri 5 March: 3 for 4 h each.');
});

it('says which weekday it is, and sets no date', async () => {
  const talk = ['12 bouts at 14 inc', 'wedding on the 27th', 'is the 27th of feb a saturday?'];
  expect(await replyTo(talk)).toContain('It is Sat 27 February 2027.');
  expect(await replyTo([...talk, 'when is it?'])).toContain('Nobody has said when the event is.');
  expect(await replyTo([...talk, 'feb'])).toContain('Sat 27 February 2027');
});

it('takes a doubtful answer of one word', async () => {
  expect(await replyTo(['12 bouts at 14 inc', 'wedding on the 27th', 'feb?'])).toContain('Sat 27 February 2027');
});

it('asks again of the days that fit', async () => {
  const talk = ['15 bouts at 16 inc dried', 'mothers day weekend', 'the saturday'];
  const reply = await replyTo(talk);
  expect(reply).toContain(which);
  expect(reply).toContain('Say: Sat 6 March 2027 / Sat 8 May 2027');
  expect(await replyTo([...talk, 'march'])).toContain('For Sat 6 March 2027');
});
