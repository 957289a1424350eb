// What people call each wearable piece, singular; plurals are found by rule. Longer names win over shorter ones.

import type { PieceKind } from '../../handbook/pieces.ts';
import { wordList } from './word-list.ts';

export const pieceWords: Readonly<Record<PieceKind, readonly string[]>> = {
  buttonhole: wordList(`
  buttonhole, button hole, button-hole, buttonhole piece, buttonhole flower, boutonniere, boutonnière, boutineer, boutonier,
  boutonnier, boutonnaire, boutineere, boutoneer, bouteneer, boutenier, boutenniere, boutinere, boutonnerie, boutonair, butonier, boutioniere, bout, boutt, bh, bh's, b/h, b/hole, bout piece, lapel, lapel piece, lapel flower, lapel pin flower,
  lapel pc, lapel spray, lapel bloom, lapel posy, lapel bit, coat flower, jacket flower, jacket piece, boutonniere piece, pocket
  flower, pocket boutonniere, pocket square flower, pocket piece, pocket square, b-hole, bhole, btnhole, btn hole, b hole, b'hole
`),
  'wrist corsage': wordList(`
  wrist corsage, wristlet, wc, wrist, wrist piece, wrist flower, wrist cors, wristlet corsage, bracelet corsage, corsage bracelet
  piece, floral bracelet, flower bracelet, wrist one, floral cuff, wrist cuff, wrist gajra
`),
  'pin corsage': wordList(`
  pin corsage, pin-on corsage, pin on corsage, pin-on, pin on, pinon, pinned corsage, pin cors, shoulder corsage, handbag corsage,
  lapel corsage, pin-on one, pin one
`),
  corsage: ['corsage', 'corsarge', 'corsages', 'corsage piece', 'cors', 'corsg'],
  'flower crown': wordList(`
  flower crown, floral crown, crown, halo, haloe, flower halo, floral halo, hair garland, head garland, head wreath, hair wreath, flower
  wreath, floral wreath, tiara, headpiece, circlet, flower circlet, coronet, flower crown piece, head crown, headband, floral
  headband, flower headband, wreath, half crown, hair crown, hair halo, hair circlet
`),
  'hair flower': wordList(`
  hair flower, hair piece, hairpiece, comb, hair comb, floral comb, flower comb, hair pin, hairpin, hair vine, hair clip, hairclip,
  hair clip flower, hair comb flower, hair pin flower, hair slide flower,
  hair slide, hair spray flower, barrette, hair bloom, hair floral, gajra, hair sprig, hair pc, hair bit, flower hair clip, flower
  pin, floral hair pin, loose hair flower, bun flower, bun piece, hair, flower clip, floral clip, flower clip for hair,
  flower clips for hair, flower clips for the hair, floral clips for hair, clip for hair, clips for hair, clips for the hair, comb for hair,
  combs for hair, combs for the hair, flower combs for hair, flower for hair, flowers for hair, hair flower clip, floral hair clip, flower hair comb, floral hair comb, hair flower comb
`),
  unspecified: wordList(`
  piece, pc, pcs, nos, wearable, wearable piece, unit, item, flower piece, small piece
`),
};

/** A piece word before one of these names a thing that is bought, not a piece that is made. */
export const sundryHeads = new Set(
  wordList(`
  pin, pins, magnet, magnets, box, boxes, bag, bags, wire, wires, tape, backing, backings, holder, holders, bracelet, bracelets, base,
  bases, band, bands, wristband, wristbands, card, cards, ribbon, frame, frames, board, boards, glue, case, cases, elastic, elastics, stand, tray, trays,
  blanks, blank, recipe, order, workshop, class, mic, mics, mike, light, lights, lamp, tie, ties, dryer, brush, straighteners,
  appointment, emoji, jewellery, jewelry, watch, pack, packs, pk, packet, packets, mug, mugs
`),
);
