// Where the drying and treating times were read.

import type { Source } from './sources.ts';

export const iowaDrying: Source = {
  title: 'Drying Flowers',
  publisher: 'Iowa State University Extension',
  year: 1998,
  address: 'https://yardandgarden.extension.iastate.edu/article/1998/7-10-1998/dryflower.html',
  grade: 'official',
};
export const iowaPreserving: Source = {
  title: 'Preserving Fresh Flowers',
  publisher: 'Iowa State University Extension',
  year: 1996,
  address: 'https://hortnews.extension.iastate.edu/1996/8-9-1996/preservfresh.html',
  grade: 'official',
};
export const iowaEverlastings: Source = {
  title: 'Harvesting Everlasting Flowers for Drying',
  publisher: 'Iowa State University Extension',
  year: 1996,
  address: 'https://yardandgarden.extension.iastate.edu/article/1996/7-26-1996/dryflower.html',
  grade: 'official',
};
export const kentuckyDrying: Source = {
  title: 'Drying Flowers',
  publisher: 'Kentucky Hort News',
  year: 2017,
  address: 'https://kentuckyhortnews.com/2017/11/06/drying-flowers/',
  grade: 'official',
};
export const chicagoDrying: Source = {
  title: 'Drying Flowers (Chicago Botanic Garden)',
  publisher: 'Chicago Tribune',
  year: 1999,
  address: 'http://articles.chicagotribune.com/1999-09-26/news/9910020002_1_flower-press-zinnias-silica',
  grade: 'textbook',
};
export const pressCourse: Source = {
  title: 'Course page on drying and pressing',
  publisher: 'ICAR-IASRI',
  address: 'http://ecoursesonline.iasri.res.in/mod/page/view.php?id=26721',
  grade: 'official',
};
export const gardenAnswer: Source = {
  title: 'Question 51454: eucalyptus in glycerine',
  publisher: 'National Gardening Association',
  address: 'http://garden.org/nga/searchqa/answer/51454/',
  grade: 'textbook',
};
export const floristList: Source = {
  title: 'How to preserve flowers by drying',
  publisher: 'florist, Australia',
  address: 'https://www.floralalchemy.com.au/blogs/flower-care-how-to/how-to-preserve-flowers-by-drying',
  grade: 'trade',
};
export const strawflowerFarm: Source = {
  title: 'Flower of the week: strawflower',
  publisher: 'flower farm',
  address: 'https://www.gofarm.org/single-post/flower-of-the-week-strawflower',
  grade: 'trade',
};
export const staticeFarm: Source = {
  title: 'Statice',
  publisher: 'flower farm',
  address: 'https://www.twokaysflowerfarm.com/post/statice',
  grade: 'trade',
};
export const lavenderFarm: Source = {
  title: 'From fresh to dried lavender',
  publisher: 'lavender farm',
  address: 'https://tumalolavender.com/article-fresh-to-dried-lavender.htm',
  grade: 'trade',
};
export const lavenderHouse: Source = {
  title: 'How to dry fresh cut lavender',
  publisher: 'retailer',
  address: 'https://www.thechateaucollection.com/blogs/news/how-properly-dry-fresh-cut-lavender',
  grade: 'trade',
};
export const poppyGrower: Source = {
  title: 'Growing dried flowers: poppy heads',
  publisher: 'dried-flower grower',
  year: 2012,
  address: 'https://driedflowercraft.co.uk/2012/06/growing-dried-flowers-poppy-heads/',
  grade: 'trade',
};
export const poppyFlorist: Source = {
  title: 'How to dry poppy seed heads',
  publisher: 'florist',
  address: 'https://myldf.co.uk/how-to-dry-poppy-seed-heads/',
  grade: 'trade',
};
export const poppyGarden: Source = {
  title: 'Drying poppy heads',
  publisher: 'garden page',
  address: 'http://www.mysunnylawn.com/a298651.php',
  grade: 'unattributed',
};
export const eucalyptusPage: Source = {
  title: 'How do you dry eucalyptus',
  publisher: 'garden page',
  address: 'https://ccj-new-prod.specialtyfood.com/post/how-do-you-dry-eucalyptus',
  grade: 'unattributed',
};
export const silicaList: Source = {
  title: 'How to dry flowers with silica gel and wiring for use',
  publisher: 'garden page',
  year: 2014,
  address: 'https://cottagegardenliving.wordpress.com/2014/12/24/how-to-dry-flowers-with-silica-gel-and-wiring-for-use/',
  grade: 'unattributed',
};
