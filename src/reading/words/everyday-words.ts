// Things of everyday life round a shop: vehicles, bills, food, weather, pets, health. A sentence about one of them is no order.
// Places where events are held (hotel, church, school, barn) and words a price is said with stand in no such list.

import { wordList } from './word-list.ts';

// "home with a bout of flu", "two bouts of rain": what there was a bout of, so that nobody makes a boutonniere of it.
const hadBoutsOf = wordList(`
  flu, man flu, covid, gastro, sickness, food poisoning, tummy trouble, tummy bug, stomach bug, norovirus, vomiting, nausea,
  morning sickness, travel sickness, diarrhoea, diarrhea, illness, ill health, bad health, hayfever, hay fever, sneezing, sneezes, sniffles, coughing, hiccups, asthma,
  bronchitis, pneumonia, tonsillitis, laryngitis, sinusitis, conjunctivitis, cystitis, eczema, shingles, gout, sciatica, vertigo, dizziness,
  insomnia, migraine, migraines, headaches, back pain, backache, cramp, anxiety, nerves, panic, stress, depression, tears, crying, giggles, laughter,
  rain, heavy rain, wet weather, bad weather, hot weather, cold weather, wind, snow, hail, frost, loadshedding, load shedding, bad luck, luck, indecision,
  boxing, wrestling, sparring, cleaning, tidying
`);
const how = ['', 'the ', 'my ', 'bad ', 'really bad ', 'nasty ', 'mild ', 'rotten ', 'severe '];
const bouts = how.flatMap((word) => hadBoutsOf.flatMap((what) => [`bout of ${word}${what}`, `bouts of ${word}${what}`]));
const boutsWith = ['flu', 'the flu', 'covid', 'gastro', 'hayfever'].map((what) => `bout with ${what}`);

/** Singular; plurals are found by rule. */
export const everydayWords = [
  ...bouts,
  ...boutsWith,
  ...wordList(`
  van, van hire, lorry, truck, ute, bakkie, trailer, forklift, taxi, cab, tyre, tire, wiper, mot, wof, rego, petrol, diesel,
  fuel, mileage, satnav, sat nav, parking, parking fine, parking ticket, car park, speeding ticket, speeding fine, toll, bus,
  bus fare, tram, train, train ticket, flight, ferry, airport, motorway, traffic, roadworks, number plate, breakdown truck, car wash,
  car seat, the car, my car, bike, scooter, road tax, tax disc, tempo, rickshaw, auto rickshaw, plumber, electrician, locksmith,
  builder, handyman, landlord, window cleaner, cleaner, gardener, painter, decorator, accountant, bookkeeper, solicitor, lawyer,
  dentist, doctor, gp, vet, physio, nurse, hairdresser, barber, babysitter, childminder, tutor, sparky, tradie, pest guy, boiler man,
  ac man, aircon man, sign writer, window man, milkman, postman, postie, courier, caterer, videographer, dj, bouncer,
  caretaker, rent, mortgage, electric bill, electricity bill, electricity, power bill, water bill, gas bill, phone bill,
  council rates, business rates, insurance, insurance excess, broadband, internet, wifi, subscription, direct debit, overdraft,
  payroll, payslip, pay slip, pension, bas is, bas due, my bas, tax return, gst return, vat return, tax bill, tax office, card fees, bank fees,
  petty cash, the till, till roll, parking meter, skip hire, split the bill, bar tab, invoice, inv, receipt, lottery, lotto, raffle,
  raffle ticket, sweepstake, sponsorship, loan, credit card, card machine, card reader, fridge, freezer, boiler, kettle, toaster,
  microwave, dishwasher, oven, hoover, vacuum, aircon, air con, heating, heater, radiator, thermostat, geyser, generator, inverter,
  immersion, dehumidifier, fan heater, printer, printer ink, ink cartridge, cartridge, laptop, computer, keyboard, monitor,
  hard drive, phone, phone plan, sim card, charger, battery, batteries, router, password, login, app, website, web site, software,
  software update, backup drive, camera, tripod, radio, playlist, alarm, smoke alarm, fire alarm, fire extinguisher, fire drill,
  door code, padlock, toilet, loo, gutter, ceiling tile, light bulb, lightbulb, bulb, fuse, lamp, shelf, shelving, shelves,
  office chair, sofa, carpet, curtain, paint tin, drill bit, screwdriver, hammer, spanner, step ladder, stepladder, hosepipe,
  mop, dustpan, bins, bin bag, bin day, wheelie bin, rubbish, recycling, soap, bleach, towel, tea towel, toilet roll, loo roll,
  kitchen roll, washing up liquid, apron, t shirt, tee shirt, hoodie, uniform, jumper, umbrella, handbag, snips, scissors, secateurs,
  shears, stapler, staple gun, staples, glue gun, business card, flyer, leaflet, signage, gift tag, swing tag, envelope, notebook,
  biro, sharpener, whiteboard, post it, parcel, pallet, delivery note, shipping, postage, lunch, breakfast,
  takeaway, pizza, burger, curry, sandwich, sandwiches, bacon roll, sausage roll, pie, pies, pasty, fries, fish and chips,
  kebab, sushi, noodles, soup, salad, samosa, biryani, vada pav, roti, bread, loaf, milk, cheese, butter, egg, eggs, sausage, bacon,
  banana, apple pie, biscuit, cookie, brownie, muffin, donut, doughnut, croissant, scone, mince pie, birthday cake, cup cake, cupcake,
  chocolate, sweets, ice cream, crisps, coffee, flat white, latte, cappuccino, espresso, tea, tea bag, teabag, tea break, chai,
  sugars, cuppa, juice, water bottle, beer, wine, prosecco, gin, pint, pints, smoko, birthday card,
  leaving card, leaving present, leaving do, staff do, christmas do, xmas do, secret santa, pub quiz, hen night, whip round,
  collection tin, food bank, dog, dogs, puppy, puppies, kitten, cat, cats, hamster, rabbit, chicken, chickens, hen house, horse, pony,
  mice, mouse, rat, rats, wasp, wasps, ant, ants, spider, fox, vet bill, dog walker, kennels, paracetamol, ibuprofen, antibiotics,
  prescription, plaster, plasters, first aid kit, first aid, bandage, blood pressure, blood test, scan, x ray, xray, injection, flu,
  flu jab, jab, migraine, headache, sick note, hospital, tooth, root canal, gym, pilates, yoga, half marathon, marathon,
  swimming lesson, driving lesson, driving test, guitar lesson, haircut, hair cut, hair appointment, hair appt, massage, nail appointment, nail appt, lash appointment, lash appt, brow appointment, brow appt, hair and makeup,
  nails done, school run, school fee, school fees, school uniform, school bag, school play, school trip, school holidays,
  parents evening, homework, maths, gcse, nursery fees, daycare, creche, babysitting, sleepover, netball, football, footy, rugby,
  cricket, golf club fees, wickets, penalty, penalties, the match, kick off time, gig tickets, cinema, cinema ticket,
  podcast, caravan, campsite, hotel room, passport, suitcase, 
  follower, followers, advert, newsletter, hashtag,
  hashtags, loadshedding, load shedding, power cut, power outage, blackout, outage, storm, thunderstorm, rain, rainfall, snow, sleet,
  frost, drizzle, gale, wind gusts, gusting, flooding, heatwave, heat wave, weather, forecast, sunrise, sunset, humidity,
  wedding fair, wedding expo, trade show, trade stand, market stall, market pitch, stall fee, craft fair,
  interview, interviews, interviewing, jury duty, meeting, staff meeting, team meeting, training day, induction,
  first aid course, annual leave, sick leave, sick pay, minimum wage, holiday pay, swear jar, lost property, phone number, postcode,
  post code, spare key, keys, fob key, keypad, combination lock, stamps, work boots, rubber gloves, fish tin of paint,
  pot of paint, drill bits, power drill, bedroom, babysit, clutch cable, exhaust, gearbox, headlight, windscreen, engine, garage bill,
  breakdown cover, the garage, roadside, seat belt, petrol station, charging cable, usb, hdmi, payment terminal, float, the float,
  safe combination, bank charges, bank fee, bank account, bank loan, bank manager, refund policy, parish, postbag, courier fee, my back, my knee, my phone,
  my train, my bus, my flight, my dentist, my landlord,
  ticket, tickets, concert ticket, love letter, work jacket, marquee hire, bouncy castle, lock, keyring,
  till is, till was, till short, having twins, newborn, midwife, maternity leave, new starter, work experience, contract, standing order,
  letters spelling, name letters, stayed, bedsheets, bed and breakfast, air mattress, pocket money, tooth fairy, bake sale, jumble sale,
  car boot, yard sale, garage sale, swimming, football kit, kit bag, packed lunch, packed lunches, play date, bedtime, nap,
  opening hours, christmas hours, xmas hours, easter hours, bank holiday hours, shop bunch, shop bunches, the reel, boosted, hayfever,
  roofer, tiler, plasterer, glazier, welder, mechanic, installer, surveyor, removal men, removalist, mover, delivery driver, delivery guy,
  repairman, repair man, technician, it guy, tree surgeon, chimney sweep, carpet fitter, upholsterer, seamstress, chef, barman, busker,
  christmas tree, xmas tree, pumpkin, poinsettia, houseplant, house plant, pot plant, gift voucher, voucher, panto, payday, bonus, goldfish,
  the post, chair cover, chair covers, spray tan, veil, limo, disco ball, photo booth, favours, place card, place cards, table plan, napkin
`),
];
