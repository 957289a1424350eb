// Flowers, foliage and sundries by their usual names (left) and what people call them (right); pack words; other flower work.
// Names are singular. Local names are kept as typed.

import { wordList } from './word-list.ts';

export const ingredients: Readonly<Record<string, readonly string[]>> = {
  gypsophila: wordList(`
  gyp, gyps, gypso, gypsophila, gypsophilia, gipsophila, gypsofilia, gypsophlia, gypsophelia, baby's breath, babys breath, baby breath
`),
  eucalyptus: ['euc', 'euca', 'eucalyptus', 'eucalypt', 'eucy', 'eucaliptus', 'eucs', 'eucalytpus', 'eucalyptis', 'eucalyptas'],
  statice: ['statice', 'statis'],
  limonium: ['limonium', 'limo'],
  strawflower: ['strawflower', 'strawflwr'],
  'straw flower': ['straw flower', 'straw flwr'],
  'bunny tail': ['bunny tail', 'bunnies tail'],
  'spray rose': ['spray rose', 'sprayrose'],
  lavender: ['lavender', 'lav', 'lavendar'],
  ruscus: ['ruscus', 'rucus'],
  waxflower: ['waxflower', 'wax', 'waxflwr'],
  'wax flower': ['wax flower', 'wax flwr'],
  ranunculus: ['ranunculus', 'ranunc', 'ranuncs', 'ranunculi', 'ranunculas', 'rananculus', 'ranuculus', 'ranunclus'],
  carnation: ['carnation', 'carns', 'carn'],
  chrysanthemum: ['chrysanthemum', 'chrysanth', 'chrysanths', 'crysanthemum', 'chrysanthamum', 'chrysanthemem'],
  lisianthus: ['lisianthus', 'lizzie', 'lissie', 'lisi', 'lissies', 'lisianthis', 'lissianthus', 'eustoma'],
  pittosporum: ['pittosporum', 'pitto', 'pittos', 'pittisporum'],
  snowberry: ['snowberry', 'snowberries'],
  daisy: ['daisy', 'daisies'],
  peony: ['peony', 'peonies'],
  leaf: ['leaf', 'leaves'],
  hydrangea: ['hydrangea', 'hydrangia', 'hydranga'],
  freesia: ['freesia', 'fresia', 'freezia'],
  anemone: ['anemone', 'anenome'],
  alstroemeria: ['alstroemeria', 'alstro', 'alstromeria'],
  leucadendron: ['leucadendron', 'leuca', 'leucadendrum', 'leucodendron'],
  leucospermum: ['leucospermum', 'leucospermun'],
  craspedia: ['craspedia', 'craspidia', 'craspedium'],
  helichrysum: ['helichrysum', 'helicrysum', 'helichrisum'],
  cymbidium: ['cymbidium', 'cymbid'],
  phalaenopsis: ['phalaenopsis', 'phalaenopsis orchid', 'phal'],
  gerbera: ['gerbera', 'gerbs', 'gerb', 'gerbra', 'gerber daisy', 'gerbera daisy'],
  "lamb's ear": ["lamb's ear", 'lambs ear'],
  'rose hip': ['rose hip'],
  'gum nut': ['gum nut'],
  'pepper berry': ['pepper berry'],
  'rice flower': ['rice flower'],
  'poppy head': ['poppy head'],
  'pearl head pin': ['pearl head pin', 'pearl-head pin'],
  'corsage bracelet': ['corsage bracelet'],
};

/** Goods that stand under their own names. */
export const goodsNames = wordList(`
  bunnytail, rosehip, gumnut, pepperberry, riceflower, poppyhead, lagurus, billy button, billy ball, rose, rosemary, fern, leatherleaf, leather leaf, wheat, thistle,
  eryngium, astrantia, orchid, dendrobium, hypericum, hypericum berry, ivy, ivy leaf, olive, olive
  leaf, pampas, pampas grass, phalaris, protea, blushing bride, banksia, fynbos, scabiosa, scabious, scabiosa pod, poppy
  pod, nigella, love in a mist, bay leaf, heather, erica, tulip, delphinium, larkspur, amaranthus, gomphrena, globe amaranth,
  solidago, solidaster, goldenrod, salal, asparagus fern, plumosus, jasmine, mogra, stephanotis, marigold, genda, rajnigandha,
  tuberose, symphoricarpos, foliage, greenery, filler, ribbon, velvet ribbon, satin ribbon, twine, raffia, hessian, string, cord,
  jute, elastic, wrist corsage bracelet, corsage band, wristlet band, wrist bracelet, bracelet, wrist band, crown base, crown ring, comb blank, hair comb blank, binding wire, corsage elastic, silica gel, thread, gum leaf, eucalyptus leaf,
  jasmine bud, rose head, rose bud, rosebud, spray rose head, ruscus leaf, salal leaf, fern tip, lavender head, orchid head, wheat
  ear, seed head, seed pod, tape, stem tape, floral tape, flower tape, florist tape, gutta tape, wire, rose wire, stub wire, floral
  wire, florist wire, bullion wire, pin, pearl pin, boutonniere pin, corsage pin, buttonhole pin, lapel pin, magnet, boutonniere
  magnet, corsage magnet, buttonhole magnet, magnet backing, glue, glue stick, floral glue, cold glue, twig, larch twig, birch twig,
  spray carnation, paper daisy, silica, pearl, bead, feather, moss, clay, berry, sea holly, hellebore, veronica, sweet pea,
 sunflower, baby rose, baby eucalyptus, baby gum, safari sunset, sunset safari, lily, calla lily, iris, dahlia, snapdragon, stock flower, aster, cornflower, myrtle, thyme, mint, sage,
  viburnum, senecio, dusty miller, brunia, kangaroo paw, everlasting, thryptomene, geraldton wax, flannel flower, tea tree, lotus
  pod, cotton, cotton boll, oat, barley, quaking grass, grass, reed, mimosa, wattle, acacia, everlasting daisy, xerochrysum,
  rhodanthe, honesty, lunaria, poppy, pine, cone, pine cone, cedar, juniper, holly, mistletoe, camellia, gardenia, magnolia,
  bougainvillea, chamomile, feverfew, queen anne lace, ammi, dill, clematis, jasmine vine, hops, spiraea, forsythia, blossom, cherry
  blossom, pussy willow, willow, moss ball, skimmia, pieris, aspidistra, monstera, palm, palm spear, lemon leaf, camellia leaf, galax
  leaf, tortum, sinuata, caspia, misty, bupleurum, agapanthus, nerine, crocosmia, muscari, hyacinth, narcissus,
  daffodil, lily of the valley, oregonia, boxwood, buxus, bell, floral foam, foam, cuff, barrette clip, comb base, headband base,
  ribbon roll, lace, organza, cellophane, cello bag, corsage box, buttonhole box, boutonniere box, buttonhole bag, boutonniere bag, corsage bag, display box, label, safety pin,
  pincushion, pincushion protea, king protea, berzelia, serruria, tweedia, oxypetalum, chincherinchee, ornithogalum, star of bethlehem, privet,
  privet berry, bird of paradise, strelitzia, anthurium, gladiolus, gladioli, allium, lilac, foxglove, phlox, cosmos, zinnia, yarrow, achillea,
  tansy, celosia, cockscomb, echinops, globe thistle, scotch thistle, blue thistle, nigella pod, physalis, chinese lantern, sedum, succulent,
  echeveria, air plant, tillandsia, stachys, artemisia, olive branch, smilax, honeysuckle, passion flower, ivy berry, crab apple, rowan berry,
  hawthorn, blackthorn, snowdrop, primrose, bluebell, forget me not, forget-me-not, cow parsley, sanguisorba, astilbe, aconitum, trachelium,
  kalanchoe, cyclamen, fuchsia, plumeria, frangipani, hibiscus, spider mum, button mum, cushion mum, spray mum, santini, spray chrysanthemum,
  dianthus, sweet william, green trick, garden rose, mini rose, miniature rose, mini carnation, ozothamnus, baeckea, boronia, christmas bush,
  waratah, grevillea, bottlebrush, callistemon, manuka, leptospermum, smoke bush, cotinus, emu grass, umbrella fern, koala fern, sword fern,
  maidenhair fern, fishbone fern, bear grass, steel grass, lily grass, flexi grass, pearl grass, fountain grass, setaria, millet, rye, flax,
  linseed, flax pod, canary grass, stipa, briza, foxtail, bulrush, italian ruscus, soft ruscus, silver dollar, silver dollar gum, baby blue
  eucalyptus, seeded eucalyptus, silver brunia, kochia, photinia, pistache, nandina, hebe, choisya, euonymus, laurel leaf, lemon myrtle,
  oregano, marjoram, fennel, edelweiss, shamrock, clover, champa, chameli, parijat, genda phool, gainda, nargis, gulab, sevanti, tulsi,
  mango leaf, ashoka leaf, juhi, mokara, vanda, oncidium, kapok, kapokbossie, restio, phylica, bouvardia, gloriosa, eremurus, liatris,
  campanula, clarkia, calendula, nasturtium, pansy, viola, carthamus, safflower, amaranth, hanging amaranthus, bells of ireland, moluccella,
  molucella, genista, heuchera, fatsia, cordyline, orange slice, cinnamon stick, star anise, acorn, lotus, lotus flower, lotus bud,
  peacock feather, pheasant feather, antirrhinum, monkshood, cape daisy, erigeron, antigonon, hellebore flower, spirea, lisianthus bud, rose petal,
  diamante, rhinestone, diamante pin, pearl spray, pearl bracelet, burlap, lace ribbon, chiffon, chiffon ribbon, silk ribbon, grosgrain, grosgrain ribbon,
  tulle, parafilm, stem wire, stem wrap, stem wrap tape, floral wrap, corsage wrap, kraft wrap, stem cover, stem tube, sola wood rose, pot tape, hot glue stick, glue gun stick, water tube, water vial, flower tube, reel wire, aluminium
  wire, paper wire, paper covered wire, bindwire, bind wire, crocodile clip, croc clip, alligator clip, snap clip, wire comb, metal comb, plastic
  comb, slap bracelet, elastic band, rubber band, photo charm, charm, teardrop pin, ball head pin, hair grip, bobby pin, kirby grip, adhesive, pva, hairspray, floral spray, spray paint
`);

/** Singular pack words: what a wholesaler sells by. */
export const packWords: Readonly<Record<string, readonly string[]>> = {
  bunch: ['bunch', 'bunches', 'bn', 'bun', 'bch', 'bnch', 'bunc'],
  wrap: ['wrap', 'wraps'],
  box: ['box', 'boxes', 'bx', 'case', 'cases', 'carton'],
  bag: ['bag', 'bags'],
  pack: ['pack', 'packs', 'pk', 'pks'],
  packet: ['packet', 'packets', 'pkt', 'pkts'],
  spool: ['spool', 'spools'],
  roll: ['roll', 'rolls', 'reel', 'reels'],
  bundle: ['bundle', 'bundles'],
  stem: ['stem', 'stems', 'stm', 'stms', 'st'],
  bucket: ['bucket', 'buckets'],
  tray: ['tray', 'trays'],
  sleeve: ['sleeve', 'sleeves'],
  sheet: ['sheet', 'sheets'],
  card: [],
  jar: ['jar', 'tub'],
  head: ['heads'],
  dozen: ['dozen', 'doz'],
  kg: ['kilo', 'kg', 'kilogram'],
  metre: ['metre', 'meter', 'mtr'],
  yard: ['yard', 'yd'],
  hundred: [],
};

/** Words for a bit of plant, dropped before the name: "2 bits of gyp", "1 stem limonium". */
export const portionWords = new Set(
  wordList(`
  bit, bits, stem, stems, sprig, sprigs, piece, pieces, head, heads, stalk, stalks, pc, pcs, snip, snips, strand, strands, length,
  lengths, bloom, blooms, floret, florets, of, x, small, little, wee, tiny, nice, single, lil, cutting, cuttings, sprays, tips, tip,
  touch
`),
);

/** Flower work that is not worn: never counted as pieces. */
export const otherWork = wordList(`
  bouquet, bridal bouquet, bridesmaid bouquet, bridesmaids bouquet, posy, posies, arch, arches, archway, table centre, table center,
  centrepiece, centerpiece, centre piece, center piece, table arrangement, arrangement, pew end, pew, urn, vase, bud vase,
  installation, cake flower, cake topper, cake, aisle, aisle marker, aisle arrangement, aisle meadow, pedestal, garland, runner, table
  runner, swag, backdrop, flower wall, basket, flower girl basket, wreath for the door, door wreath, funeral wreath, coffin, coffin top, casket top, coffin wreath, casket wreath, grave wreath, memorial
  wreath, christmas wreath, xmas wreath, advent wreath, remembrance wreath, poppy wreath, table wreath, wall wreath, casket, casket
  spray, sheaf, hanging, chuppah, mandap, meadow box, trough, jam jar, jar, hoop, bouquets, tossing bouquet, toss bouquet, petals,
  confetti, top table, table, milk churn, moon gate, flower arch, church flowers, bqt, bq, bouq, maids bouquet, bm bouquet, flower
  ball, pomander, hand tied, hand-tied, handtied, sweetheart table, low arrangement, ceremony arrangement, car ribbon, car decoration,
  varmala, jaimala, flower wall panel, standing spray, compote, compotes, candle ring, wand, flower wand, topiary, signage flowers,
  welcome sign, pew bow, ladder, pillar, pillars, garlands, ceremony flowers, reception flowers, table flowers, venue flowers, altar flowers,
  pulpit flowers, window sill, window sills, funeral spray, coffin spray, low bowl, low bowls, tall bowl, table bowl, table bowls, planter,
  hand tie, hamper, cushion, letters, letter tribute, posy pad, heart tribute, welcome board, floral hoop, flower hoop, column, hedge, cloche, terrarium,
  planters, jug, jugs, centre bowl, mantel, mantelpiece, staircase, doorway, arbour, arbor, gazebo, pergola, trellis, plinth, plinths
`);
