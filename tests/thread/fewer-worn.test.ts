// Fewer wearers than made the order: whether fewer pieces are made is asked, and the order stays until somebody says.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const listed = ['groom, best man, 3 groomsmen & 2 dads all bouts', '15 each inc, fresh'];
const asked = '“only 2 groomsmen now”: fewer pieces too? The order stays as it is until you say.\nSay: 1 fewer / keep 7';

describe('wearers whose pieces are the order', () => {
  it('are asked about, and the order stays', async () => {
    expect(await replyTo([...listed, 'only 2 groomsmen now'])).toContain(asked);
    expect(await replyTo([...listed, 'only 2 groomsmen now', 'total?'])).toContain('£105.00 in all');
  });

  it('take their piece with them when that is said', async () => {
    expect(await replyTo([...listed, 'only 2 groomsmen now', '1 fewer'])).toContain('Buttonholes: 7 → 6');
    expect(await replyTo([...listed, 'only 2 groomsmen now', '1 fewer', 'total?'])).toMatch(/^£90\.00 in all/);
  });

  it('leave a piece without a name when it is kept', async () => {
    expect(await replyTo([...listed, 'only 2 groomsmen now', 'keep 7', "who's got what?"])).toContain(
      '6 wearers, 7 pieces: 1 buttonhole has no name yet.',
    );
  });
});

describe('wearers told with what theirs costs', () => {
  const priced = 'groom £18, best man £15, 4 ushers £12 each, fresh inc vat';
  const kinds = '6 bridesmaids hair flowers 25 each, 2 flower girls crowns 60 each, 8 bouts 17 inc';

  it('lose a piece at their own price', async () => {
    expect(await replyTo([priced, 'ushers 3 now', '1 fewer', 'total?'])).toMatch(/^£69\.00 in all/);
    expect(await replyTo([priced, 'no best man', '1 fewer', 'total?'])).toMatch(/^£66\.00 in all/);
  });

  it('are named no more once they are gone, though their piece is kept', async () => {
    expect(await replyTo([priced, 'no best man', 'keep 6', "who's got what?"])).not.toContain('best man');
  });

  it('are known from their lines', async () => {
    expect(await replyTo([kinds, "who's got what?"])).toMatch(/6 bridesmaids: hair flowers\n- 2 flower girls: flower crowns/);
    expect(await replyTo([kinds, 'only 5 bridesmaids now', '1 fewer', 'total?'])).toMatch(/^£381\.00 in all/);
    expect(await replyTo([kinds, 'one flower girl dropped out'])).toContain('Say: 1 fewer / keep 2');
  });
});

describe('nothing is asked', () => {
  it('where the order holds more than those who are named', async () => {
    expect(await replyTo(['30 bouts at 15 inc', 'groom, best man, 4 ushers', '3 ushers'])).not.toContain('fewer pieces too');
  });

  it('where more of them wear one', async () => {
    expect(await replyTo([...listed, '4 groomsmen'])).not.toContain('fewer pieces too');
  });
});
