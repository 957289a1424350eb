// What the flowers are: dried, fresh, mixed, preserved or artificial.

import type { Material } from '../../handbook/pieces.ts';
import { wordList } from './word-list.ts';

export const materialWords: Readonly<Record<Material, readonly string[]>> = {
  dried: wordList(`
  dried, dry, dryed, drid, dried flower, dried flowers, driedflowers, everlasting, everlastings, all dried, dries, air dried,
  air-dried
`),
  fresh: wordList(`
  fresh, freash, fresh flower, fresh flowers, fresh cut, live flowers, real flowers, real, live, frsh, fesh
`),
  mixed: [
    'mixed',
    'mixed dried and fresh',
    'mixed fresh and dried',
    'dried and fresh',
    'fresh and dried',
    'dried n fresh',
    'fresh n dried',
    'dried & fresh',
    'fresh & dried',
    'dried + fresh',
    'fresh + dried',
    'fresh/dried',
    'dried/fresh',
    'half fresh half dried',
    'half dried half fresh',
    'half fresh, half dried',
    'half dried, half fresh',
    'half dried and half fresh',
    'half fresh and half dried',
    'part dried part fresh',
    'part fresh part dried',
    'mix of dried and fresh',
    'mix of fresh and dried',
    'mix dried and fresh',
    'mix fresh and dried',
    'mix of fresh & dried',
    'mix of dried & fresh',
    'fresh with dried',
    'dried with fresh',
    'both fresh and dried',
    'both dried and fresh',
    'mixed dried n fresh',
    'mixed fresh n dried',
    'mixed dried/fresh',
    'mixed fresh/dried',
    'fresh plus dried',
    'dried plus fresh',
    'bit of both',
    'mix of both',
    'fresh and dry',
    'dry and fresh',
    'mixed media',
    'mixture of fresh and dried',
    'mixture of dried and fresh',
    'dried w fresh',
    'fresh w dried',
    'half n half',
    'mix of dried n fresh',
    'mix of fresh n dried',
    'mixture of dried & fresh',
    'mixture of fresh & dried',
    'mixed fresh & dried',
    'mixed dried & fresh',
    'dried fresh mix',
    'fresh dried mix',
    'fresh/dried mix',
    'dried/fresh mix',
    'mix of fresh + dried',
    'mix of dried + fresh',
  ],
  preserved: wordList(`
  preserved, preservd, persevered, stabilised, stabilized, glycerined, forever roses, preseved, presreved, freeze dried, freeze-dried,
  eternal
`),
  artificial: wordList(`
  artificial, silk, silks, faux, fake, fake flowers, plastic, paper, foam roses, foam flowers, sola wood, sola, permanent botanicals,
  artificals, artifical, artificial flowers, silk flowers, faux flowers, wooden flowers, real touch, real-touch, latex
`),
};
