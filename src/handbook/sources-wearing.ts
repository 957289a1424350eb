// The sources on how the pieces are made, worn, packed and kept: class units first, then working florists, whose habits differ.

import type { Source } from './sources.ts';

const source = (grade: Source['grade'], title: string, publisher: string, address: string, year?: number): Source => ({
  title,
  publisher,
  address,
  grade,
  ...(year === undefined ? {} : { year }),
});

export const wearingSources = {
  classUnit: source(
    'textbook',
    'Designing Corsages and Boutonnieres, class unit',
    'agricultural education course',
    'https://studylib.net/doc/5707417/designing-corsages-and-boutonnieres',
  ),
  corsageSteps: source(
    'textbook',
    'Corsage Construction, class handout',
    'floristry course',
    'https://studylib.net/doc/5573904/corsage-construction',
  ),
  boutonniereSteps: source(
    'textbook',
    'Constructing Boutonnieres and Corsages',
    'Georgia Agriculture Education',
    'https://fr.slideserve.com/ilori/cut-flowers-and-foliage-3',
    2005,
  ),
  bodyFlowers: source('textbook', 'Body flowers, class text', 'floristry course', 'https://studylib.net/doc/9074275/bullion-wire'),
  lessonNotes: source(
    'textbook',
    'Boutonniere and corsage lesson notes',
    'floristry course',
    'https://www.scribd.com/document/508331355/Kami-Export-Kaelyn-Brushett-Boutonniere-Corsage-Notes',
  ),
  taping: source('textbook', 'Design pointer 7', 'American Floral Art School, Chicago', 'http://floratape.com/design/pointer/fdp07'),
  leftRight: source('trade', 'Corsages and boutonnieres', 'a working florist', 'https://pikeplacebouquets.com/coursages-and-boutonierres/'),
  pinningOn: source(
    'trade',
    'How to pin on a boutonniere and corsage',
    'a wedding guide',
    'https://www.perfectweddingguide.com/ideas/how-to-pin-on-a-wedding-boutonniere-and-corsage/',
  ),
  etiquette: source(
    'trade',
    'Corsage and boutonniere etiquette',
    'a working florist',
    'https://www.thesnapdragonstudio.ca/single-post/2016/04/21/corsage-boutonniere-etiquette',
    2016,
  ),
  whoWears: source('trade', 'Corsages and boutonniere FAQs', 'a working florist', 'https://athionns.com/corsages-and-boutonniere-faqs/'),
  sparesWhy: source(
    'trade',
    'Why order extra boutonnieres',
    'a wedding planner',
    'http://weddingandeventheroes.com/why-order-extra-boutonnieres/',
  ),
  sparesUshers: source(
    'trade',
    'Tips to keep your flowers fresh',
    'a working florist',
    'http://kiwicabbage.blogspot.com/2011/04/tips-to-keep-your-flowers-fresh-and.html',
    2011,
  ),
  threeElements: source(
    'trade',
    'How to make a buttonhole',
    'a flower supplier',
    'https://alsmeer.co.za/2019/09/30/how-to-make-a-buttonhole/',
    2019,
  ),
  stemWrap: source(
    'trade',
    'Floral designing: flowers you wear',
    'a working florist',
    'https://www.mysimplydesigned.com/floral-designing-corsages-and-boutonnieres-flowers-you-wear/',
  ),
  boardedCool: source(
    'trade',
    'Expert panel, session 6',
    'a panel of working florists',
    'https://botanicalbrouhaha.com/botanical-brouhaha-expert-discussion-panel-session-6/',
  ),
  orchidChill: source('trade', 'Orchids and cold', 'a flower food maker', 'https://www.chrysalflowerfood.com/2015/12/', 2015),
  phalaenopsis: source(
    'textbook',
    'Moth orchid',
    'Chain of Life Network text',
    'http://www.calyxflowers.com/Floral-Library/Content/Moth-Orchid.aspx',
  ),
  dendrobium: source(
    'textbook',
    'Dendrobium orchid',
    'Floral Design Institute',
    'https://www.floraldesigninstitute.com/blogs/resources-flower-library/dendrobium-orchid',
  ),
  cymbidium: source(
    'textbook',
    'Cymbidium',
    'Floral Design Institute',
    'https://www.floraldesigninstitute.com/blogs/resources-flower-library/cymbidium',
  ),
  cattleya: source(
    'textbook',
    'Cattleya orchid',
    'Floral Design Institute',
    'https://www.floraldesigninstitute.com/blogs/resources-flower-library/cattleya-orchid',
  ),
  stephanotis: source(
    'textbook',
    'Stephanotis',
    'Floral Design Institute',
    'https://www.floraldesigninstitute.com/blogs/resources-flower-library/stephanotis',
  ),
  freshCare: source(
    'textbook',
    'Flower library, care of most cut flowers',
    'Floral Design Institute',
    'https://www.floraldesigninstitute.com/blogs/resources-flower-library/carnation',
  ),
  driedLight: source(
    'official',
    'Help with Herb Drying in Maryland, p 26',
    'University of Maryland Eastern Shore Extension',
    'https://issuu.com./umes.edu/docs/herb_interactive_mkv38final-3/26',
  ),
  driedYear: source('official', 'The art of dried flowers', 'Victoria County Master Gardeners', 'https://www.vcmga.org/2008_Aug07', 2008),
  driedBoxes: source(
    'official',
    'CIR495/EP004 Drying and Preserving Plant Materials',
    'UF/IFAS Extension',
    'https://edis.ifas.ufl.edu/publication/ep004',
    2020,
  ),
} as const satisfies Record<string, Source>;
