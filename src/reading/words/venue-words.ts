// Where guests are and what they do there: said with an hour behind it, never with a price ("hotel from 5", "dancing from 9").

import { wordList } from './word-list.ts';

const venues = new Set(
  wordList(`
  hotel, church, barn, hall, marquee, venue, pub, club, winery, vineyard, castle, lodge, manor, inn, estate, restaurant, tipi, bar, room, rooms, house,
  garden, farm, golf, lawn, lounge, ballroom, terrace, temple, mosque, chapel, drinks, dinner, dancing, band, disco, dj, music, food, buffet, meal, lunch,
  brunch, tea, canapes, cocktails, speeches, photos, evening, night, afters, do, doors, guests, bbq, braai, barbecue, sangeet, baraat
`),
);
export const isVenue = (text: string): boolean => venues.has(text);
