/** The whole page of the lemon drops, metric. A change of it is a change of what people read. */
export const LEMON_DROPS_PAGE = `Harbour lemon drops

Stop at     143 °C · 289 °F on your thermometer, between 141 and 144.
Pan weighs  1 172 g with everything.
Makes       60 pieces of 5.8 g, in four fills of 15.
Keeps       hard up to about 43 °C · 109 °F; wrap within half an hour.
Watch       The probe is not covered. The mass stands 13 mm deep at the stop;
            the probe needs 25 mm. [Take a pan 11.7 cm wide]

Before anything is hot
  Hot sugar sticks and goes on burning. It is at 110 °C (230 °F) to 170 °C
    (338 °F), isomalt hotter still; at 60 °C (140 °F) skin is burnt through in
    about five seconds. Closed shoes, long sleeves, dry gloves, a bowl of cold
    water ready; no children or pets underfoot. Never taste it. Touch only
    what has lain in cold water.
  Not for children under 4. Boiled sweets can choke a child; some advice says
    none under 5. Sit while eating. Balls are the worst shape. Follow the
    advice for children where you live.
  Never pour water on hot sugar. Not even to save a batch: a teaspoon makes
    about 8 litres of steam, 1.7 for each gram, and throws the sugar out. Let
    it set or cool below 100 °C (212 °F), break it, and put the pieces into
    hot water.

What to change
  May disappoint: The probe is not covered. The mass stands 13 mm deep at the
    stop; the probe needs 25 mm. Tilting the pan by its handle gathers the
    mass around it, but not enough. A pan 11.7 cm wide would do. [Take a pan
    11.7 cm wide] [Make 1.9 times as much]
  Worth knowing: The room makes bare sweets sticky. It is at 55 % humidity;
    from 30 % on bare sweets take up water. Wrap within half an hour. [Work in
    a room at 30 % humidity]

Formula
  232 g  sugar
  155 g  dried glucose syrup
  116 g  water
  5.0 g  citric acid, off the heat, fine crystals, ‘1 heaped teaspoon’,
         somewhere from 4.4 g to 5.4 g: weigh it
  503 g  in the pan before the boil

The stop in your kitchen
  In your kitchen syrup boils about six degrees cooler, so this is the
    recipe's 148.
  Early hard crack, where most boiled drops are stopped (143 to 149 °C at sea
    level). For: boiled drops, lollipops.
  Outside 141 to 144, the water left changes by too much.
  Water boils here at 95 °C (203 °F), from your altitude, on a standard day;
    the air is at 846 hPa.
  Your thermometer shows 0.8 °C more: thermometer and weather together, and
    the stop allows for it.
  The mass itself is then at 142 °C (288 °F).
  The number is the recipe's own; what may be off is the way to your kitchen
    and the thermometer (142 to 144, worked out here).

What it is made of
  At the start 24.3 % water; it begins to boil at about 102 °C (216 °F).
  111 g of water has to go; 392 g is left at the stop.
  At the stop 2.9 % water left (2.1 % to 3.8 %, worked out here).
  In the finished sweet 2.9 % water left (2.1 % to 3.7 %, worked out here).
  Dry, it is sucrose 60.1 %, starch syrup solids 38.6 % and citric acid 1.3 %.

Steps
   1. Weigh 232 g sugar, 155 g dried glucose syrup, 116 g water and 5.0 g
      citric acid. Keep apart what goes in late: citric acid.
      ! Acid powder burns eyes and lungs. Raise no dust; close the jar.
   2. Weigh the pan empty, with spoon and probe: 780 g.
   3. Warm 232 g sugar, 155 g dried glucose syrup and 116 g water gently and
      stir until no grain is left.
      ! Hot sugar sticks and goes on burning.
      ! Fill the pan a third at most. Boiling syrup climbs, more so with milk,
        soda or wet colour.
   4. Put the lid on for two or three minutes, so that steam washes the wall
      of the pan.
   5. Take the lid off and boil; it starts at about 102 °C (216 °F). From here
      on, do not stir.
      ! Stay with the pan. Sugar left alone smokes, then burns. Then: heat
        off, lid on, never water.
   6. At 131 °C (268 °F) on your thermometer turn the heat down to about a
      third: the last degrees come fast.
   7. Stop at 143 °C · 289 °F on your thermometer, between 141 and 144. Heat
      off. That is about 11 minutes after the cold pan goes on. The base of
      the pan gives another 1.6 °C or so: allow for that, or stand the pan on
      cold dry metal. In cold water a drop shows threads that snap.
      ! Never pour water on hot sugar.
   8. Weigh the pan: 1 172 g with everything, 392 g of it the mass. Heavier
      means more water is left.
      ! Weigh the hot pan with two hands. Scale beside the hob, on a dry
        heat-proof mat; pan, spoon and probe weighed before. Never a full or
        wide pan, no children near. Or weigh what you have poured.
   9. Let it stand until it is clear, about 5 minutes, and down to 125 °C
      (257 °F).
      ! A burn: cool running water for 20 minutes. It helps up to three hours
        later. No ice, butter or cream. Take off clothing and jewellery unless
        they stick. Let set sugar soak off; do not pull. Cover it loosely with
        cling film, never on the face. Keep the person warm. Get help if it is
        larger than the hurt person's palm, on face or hands, or on a child.
        In doubt call your emergency number; local first-aid advice comes
        first.
  10. Last, stir in 5.0 g citric acid, between 115 °C (239 °F) and 122 °C
      (252 °F), within a minute.
      ! Acid powder burns eyes and lungs.
  11. Pour at once, between 105 °C (221 °F) and 122 °C (252 °F).
  12. Let it set in the room, never in the fridge: damp makes it sticky. Turn
      out at 43 °C (109 °F) or below.
  13. Wrap within 30 minutes of turning out, at 33 °C (91 °F) or below.
  14. Keep them closed and dry, at about 24 °C (75 °F).
  15. Tell whoever eats them what is in them.
      ! Not for children under 4.

Against the clock
  On your hob the stop comes about 11 minutes after the cold pan goes on (9 to
    14, worked out here).
  There it climbs about 15 °C a minute at full heat; turned down to a third
    you can catch it. At full heat your thermometer would be about 2.4 °C
    behind.
  Minutes from the cold pan, and what your thermometer shows then:
      3 min  first boil, 102 °C (216 °F)
      9 min  turn the heat down, 131 °C (268 °F)
     11 min  stop, 143 °C (289 °F)
     16 min  clear after its rest, 131 °C (268 °F)
     20 min  acid, 123 °C (253 °F)
     21 min  pour, 121 °C (250 °F)

Acid and sugar
  In the boil, at pH 5 (lower is sourer), about 0.1 % of the sucrose splits
    into glucose and fructose, called invert sugar (under 0.1 % to 1 %, worked
    out here).
  From the acid to the set sweet more of it splits (7.1 % to 74 %, worked out
    here): rough, because so little water is left. That costs nothing now;
    once the sweet takes back the water it used, it softens about 5 °C lower.
  1.3 g of sodium citrate, a salt that tames acid, would make that about 30
    times less and the taste a little less sharp.
  It tastes as sour as 1.3 % of citric acid.

What it does at which temperature
  Runs into moulds by itself from 122 °C (252 °F) up.
  Can be poured from 122 °C (252 °F) down to 106 °C (223 °F).
  Can be folded and rolled to ropes from 93 °C (199 °F) down to 83 °C
    (181 °F).
  Can be pulled from 93 °C (199 °F) down to 64 °C (147 °F).
  Can be cut and stamped from 83 °C (181 °F) down to 64 °C (147 °F).
  Sticks to what it touches from 62 °C (144 °F) up.
  Comes out of the mould at 43 °C (109 °F) or below.
  Can be wrapped at 33 °C (91 °F) or below.
  In this pan it pours for about 9 minutes (6 to 13, worked out here), enough
    to fill the mould five times.

What comes out
  397 g finished mass, of which 48 g stays on pan and tools (38 g to 60 g,
    common practice).
  348 g in 60 whole pieces (58 to 61, worked out here).
  About 0.78 times as sweet as sugar (0.72 to 0.84, quoted in print).

How it keeps
  Stays hard up to about 43 °C (109 °F), its glass point (35 to 51, quoted in
    print).
  You keep it at 24 °C (75 °F) and 55 % humidity, for 180 days.
  Each half per cent of water it takes up costs about 5 °C of that: close it
    well.
  Bare, it softens in air of more than about 30 % humidity (25 % to 35 %,
    worked out here); from 42 % on its skin is sticky.
  Graining (sugar crystals where it should be glass): low while you work it,
    low in its wrap, near certain bare. The times behind that are good to a
    factor of ten.
  Wrapped as you say it stays hard for about 210 days (71 to 640, from
    memory).

For the label
  100 g by EU rules: 1 646 kJ (387 kcal), carbohydrate 95.9 g, of which sugars
    70.5 g.
  One piece: 95 kJ (22 kcal).
  An estimate from the recipe, neither an analysis nor legal advice. Food law
    differs and changes: check with your authority before you print or claim
    anything. No figure here is about an illness.

Buying, giving, keeping
  Say what is in it. Name nuts, peanut, milk, egg, soya, wheat-based syrup,
    sulphites and the source of gelatine. Who eats it decides. Follow local
    food law.

Taken for granted
  In the pan from the start: sugar and dried glucose syrup (common practice).
  Water in dried glucose syrup: 4 %, from 2 % to 5 % (common practice).
  To be kept for 180 days (common practice).
  Left on the pan: a film, 25 to 40 g for each litre it holds (common
    practice).
  Not given, so nothing is made of it: the mould (number of moulds); the pan
    (capacity).

How we know
  Weighing up what goes in and out: what goes in = what comes out. Worked out
    here.
  Spoons and cups: grams = volume × grams per ml. Common practice.
  Boiling of the syrup: aw(composition, T) · psat(T) = p. From: common
    practice. Worked out here.
  The same strength at another pressure: aw(composition, T) · psat(T) = p.
    From: common practice. Worked out here.
  Your thermometer: reading = true temperature + shift. From: definition.
    Worked out here.
  What stays on the pan: 32 g for each litre of pan. Common practice.
  How warm it stays hard (glass point): Gordon–Taylor on a Fox mix. From:
    assumption. Quoted in print.
  Sweetness beside sugar: shares × sweetness, summed. From: assumption. Quoted
    in print.
  Heat and minutes: heat in = heat kept + heat lost. From: Bubnik et al. 1995.
    Worked out here.
  What the heat does to the colour: L = ∫ k dt. From: an energy chosen here
    between printed ones. Worked out here.
  What acid does to the sugar: log k = 16.91 + log W − 5670/T − pH. From:
    Vukov 1965 and public tables of acid constants. Worked out here.
  How sour it is: acids beside citric, summed. Common practice.
  What the air does to it: m(aw) = Σ xᵢ·mᵢ(aw). From: Zobrist et al. 2011 and
    a fit made here to printed isotherms. Worked out here.
  How long the wrap holds: t = b·W/(P·A·p₀). From: Labuza & Hyman 1998. From
    memory.
  Graining: log t = a − s·(T − T₀). From: a fit made here to spun sugar.
    Worked out here.
`;

/** The whole page of the isomalt drops, metric. */
export const ISOMALT_DROPS_PAGE = `Boiled sweets

Stop at     160.9 °C · 321.6 °F on your thermometer, between 159.7 and 162.3.
            This one rests on the model. Weigh the pan as well.
Pan weighs  413 g more than empty.
Makes       62 pieces of 5.9 g, in four fills of 15 and 2 more.
Keeps       hard only up to about 21 °C · 70 °F, and your store is at 24.
Watch       It may soften where you keep it. It stays hard up to about 21 °C
            (70 °F), its glass point; you keep it at 24 °C (75 °F). [Take less
            xylitol, to stay hard up to 39 °C (102 °F)]

Before anything is hot
  Xylitol (birch sugar) can kill a dog. Over 0.1 g for each kilogram of dog
    can crash its blood sugar in 30 to 60 minutes; over 0.5 g may destroy the
    liver. Take 0.075 g as the line. One sweet of 3 g made of xylitol reaches
    0.1 g in a dog of 29 kg. Here 9.9 % of the sweet is xylitol. Keep it from
    ferrets and all other animals too. Label the jar, out of reach. If an
    animal has eaten any, phone a vet or an animal poison line at once; do not
    wait for signs.

What to change
  May disappoint: It may soften where you keep it. It stays hard up to about
    21 °C (70 °F), its glass point; you keep it at 24 °C (75 °F). The estimate
    runs from 13 °C (55 °F) to 29 °C (84 °F). [Take less xylitol, to stay hard
    up to 39 °C (102 °F)]

Formula
  390 g  isomalt
   41 g  xylitol
   97 g  water
  1.1 g  flavour in propylene glycol, at 125 °C (257 °F)
  528 g  in the pan before the boil

The stop in your kitchen
  In your kitchen syrup boils about five degrees cooler than the 166 it would
    take at sea level.
  Below 159.7, it would soften in the store; above 162.3, the water left
    changes by too much.
  Water boils here at 95.8 °C (204.4 °F), from your reading in boiling water;
    the air is at 871 hPa.
  Height, weather or thermometer: the stop is the same within about 2 °C.
  All that the boiling and glass models may be off is in this number (153 to
    169, quoted in print).
  Nobody has published a boiling curve for isomalt. Take 160.9 as a place to
    start and judge the first drop.
  Past 161 °C (322 °F) every 10 °C more buy little hardness.

What it is made of
  At the start 24.3 % water; it begins to boil at about 102 °C (216 °F).
  115 g of water has to go; 413 g is left at the stop.
  At the stop under 0.5 % water left (under 0.5 % to 0.9 %, worked out here).
  In the finished sweet under 0.5 % water left (under 0.5 % to 0.9 %, worked
    out here).
  0.1 g of water comes with what goes in late; all of it is counted, and some
    flashes off.
  Dry, it is isomalt 90 % and xylitol 10 %.

Steps
   1. Weigh 390 g isomalt, 41 g xylitol, 97 g water and 1.1 g flavour in
      propylene glycol. Keep apart what goes in late: flavour in propylene
      glycol.
      ! Xylitol (birch sugar) can kill a dog.
   2. Stop at 160.9 °C · 321.6 °F on your thermometer, between 159.7 and
      162.3. Heat off.
   3. Weigh what is in the pan: 413 g. Heavier means more water is left.
      ! Weigh the hot pan with two hands. Scale beside the hob, on a dry
        heat-proof mat; pan, spoon and probe weighed before. Never a full or
        wide pan, no children near. Or weigh what you have poured.
   4. Flame out. Stir in 1.1 g flavour in propylene glycol, at 125 °C (257 °F)
      or below.
      ! Do not breathe the vapour of strong kitchen flavours. Most sold by the
        dram are in propylene glycol, whose vapour can catch from about 101 °C
        (214 °F). Flame out, mass at 125 °C (257 °F) or below, face back.
   5. Let it set in the room, never in the fridge: damp makes it sticky. Turn
      out at 21 °C (70 °F) or below. Your room, at 24 °C (75 °F), is warmer
      than that.
   6. Tell whoever eats them what is in them.
      ! Xylitol (birch sugar) can kill a dog.
      ! A child has enough much sooner. The guide goes by body weight: a child
        of 20 kg is there at a third of what a grown-up of 60 kg bears. One
        piece is 97 % of the guide for such a child. Ask a physician where it
        matters.

Against the clock
  Nobody said which hob. On one like most the stop comes about 13 minutes
    after the cold pan goes on (5 to 32, worked out here).
  There it climbs about 5 °C a minute at full heat, slowly enough to catch.
  Minutes from the cold pan, and what your thermometer shows then:
      4 min  first boil, 102 °C (216 °F)
     13 min  stop, 161 °C (322 °F)
     18 min  clear after its rest, 146 °C (295 °F)
     25 min  colour and flavour, 125 °C (257 °F)
     26 min  pour, 123 °C (253 °F)

What it does at which temperature
  Runs into moulds by itself from 100 °C (212 °F) up.
  Can be poured from 100 °C (212 °F) down to 84 °C (183 °F).
  Comes out of the mould at 21 °C (70 °F) or below.
  Can be wrapped at 11 °C (52 °F) or below.
  In this pan it pours for about 9 minutes (6 to 13, worked out here).

What comes out
  414 g finished mass, of which 48 g stays on pan and tools (38 g to 60 g).
  366 g in 62 whole pieces.
  About 0.55 times as sweet as sugar (0.45 to 0.7).
  Sugar alcohols are 99 % of it, 5.8 g in a piece.
  For a child of 20 kg the guide for one sitting is 1 piece. Information, not
    advice.

How it keeps
  Stays hard up to about 21 °C (70 °F), its glass point (13 to 29, quoted in
    print).
  You keep it at 24 °C (75 °F), for 90 days.
  Each half per cent of water it takes up costs about 5 °C of that: close it
    well.
  How soon a mass that is mostly not sucrose grains nobody has measured: no
    estimate.
  Say how each piece is wrapped, and the days are worked out.

For the label
  100 g by EU rules: 1 002 kJ (240 kcal), carbohydrate 99 g, of which sugars
    0 g, sugar alcohols 99 g.
  99 % of it is added sugar alcohols: above 10 % the label says that eating
    much of it may be laxative.
  ‘sugar-free’ needs an analysis (sugars, g in 100 g: 0, at most 0.5): isomalt
    frees sugar in heat and acid, so the finished sweet decides.
  An estimate from the recipe, neither an analysis nor legal advice. Food law
    differs and changes: check with your authority before you print or claim
    anything. No figure here is about an illness.

Buying, giving, keeping
  Information, not medical advice. 'Sugar-free' is neither free of
    carbohydrate nor of energy, and no figure here is about an illness. Ask a
    physician or a dietitian.

Taken for granted
  The air is what your reading in boiling water makes of it (an assumption).
  Your hob boils half a litre of cold water in four minutes; others take two
    to eight (an assumption).
  No wrapper is counted on (an assumption).

Asked beyond what was tested
  The strength of the syrup: 99.6 % here, tested from 10 % to 99.5 %. The
    answer stands, with less behind it.
  How propylene glycol boils and keeps is not known here: 0.2 % of what is
    dissolved only counts by weight.
  How sweet propylene glycol is, is not known here: 0.2 % of all but the water
    is left out of the sweetness.

How we know
  Boiling of the syrup: aw(composition, T) · psat(T) = p. From: common
    practice. Worked out here.
  How warm it stays hard (glass point): Gordon–Taylor on a Fox mix. From:
    assumption. Quoted in print.
  Heat and minutes: heat in = heat kept + heat lost. From: Bubnik et al. 1995.
    Worked out here.
`;

/** What has a unit in it, for a reader in US units. */
export const LEMON_DROPS_US = `Harbour lemon drops

Stop at     290 °F · 143 °C on your thermometer, between 286 and 291.
Pan weighs  1 172 g (2 lb 9.4 oz) with everything.
Makes       60 pieces of 5.8 g, in four fills of 15.
Keeps       hard up to about 110 °F · 43 °C; wrap within half an hour.
Watch       The probe is not covered. The mass stands 13 mm (0.5 in) deep at
            the stop; the probe needs 25 mm (1 in). [Take a pan 11.7 cm
            (4.6 in) wide]

Formula
  232 g (8.2 oz)       sugar
  155 g (5.5 oz)       corn syrup solids
  116 g (4.1 oz)       water
  5.0 g                citric acid, off the heat, fine crystals, ‘1 heaped
                       teaspoon’, somewhere from 4.4 g to 5.4 g: weigh it
  503 g (1 lb 1.7 oz)  in the pan before the boil

The stop in your kitchen
  In your kitchen syrup boils about ten degrees cooler, so this is the
    recipe's 298.
  Early hard crack, where most boiled drops are stopped (290 to 300 °F at sea
    level). For: boiled drops, lollipops.
  Outside 286 to 291, the water left changes by too much.
  Water boils here at 203 °F (95 °C), from your altitude, on a standard day;
    the air is at 24.97 inHg.
  Your thermometer shows 1.4 °F more: thermometer and weather together, and
    the stop allows for it.
  The mass itself is then at 288 °F (142 °C).
  The number is the recipe's own; what may be off is the way to your kitchen
    and the thermometer (288 to 292, worked out here).

Against the clock
  On your stove the stop comes about 11 minutes after the cold pan goes on (9
    to 14, worked out here).
  There it climbs about 26 °F a minute at full heat; turned down to a third
    you can catch it. At full heat your thermometer would be about 4 °F
    behind.
  Minutes from the cold pan, and what your thermometer shows then:
      3 min  first boil, 216 °F (102 °C)
      9 min  turn the heat down, 268 °F (131 °C)
     11 min  stop, 290 °F (143 °C)
     16 min  clear after its rest, 268 °F (131 °C)
     20 min  acid, 253 °F (123 °C)
     21 min  pour, 249 °F (121 °C)

Acid and sugar
  In the boil, at pH 5 (lower is sourer), about 0.1 % of the sucrose splits
    into glucose and fructose, called invert sugar (under 0.1 % to 1 %, worked
    out here).
  From the acid to the set candy more of it splits (7.1 % to 74 %, worked out
    here): rough, because so little water is left. That costs nothing now;
    once the candy takes back the water it used, it softens about 9 °F lower.
  1.3 g of sodium citrate, a salt that tames acid, would make that about 30
    times less and the taste a little less sharp.
  It tastes as sour as 1.3 % of citric acid.

What it does at which temperature
  Runs into molds by itself from 251 °F (122 °C) up.
  Can be poured from 251 °F (122 °C) down to 222 °F (106 °C).
  Can be folded and rolled to ropes from 199 °F (93 °C) down to 181 °F
    (83 °C).
  Can be pulled from 199 °F (93 °C) down to 148 °F (64 °C).
  Can be cut and stamped from 181 °F (83 °C) down to 148 °F (64 °C).
  Sticks to what it touches from 144 °F (62 °C) up.
  Comes out of the mold at 110 °F (43 °C) or below.
  Can be wrapped at 92 °F (33 °C) or below.
  In this pan it pours for about 9 minutes (6 to 13, worked out here), enough
    to fill the mold five times.

How it keeps
  Stays hard up to about 110 °F (43 °C), its glass point (95 to 124, quoted in
    print).
  You keep it at 75 °F (24 °C) and 55 % humidity, for 180 days.
  Each half per cent of water it takes up costs about 9 °F of that: close it
    well.
  Bare, it softens in air of more than about 30 % humidity (25 % to 35 %,
    worked out here); from 42 % on its skin is sticky.
  Graining (sugar crystals where it should be glass): low while you work it,
    low in its wrap, near certain bare. The times behind that are good to a
    factor of ten.
  Wrapped as you say it stays hard for about 210 days (71 to 640, from
    memory).

For the label
  100 g by US rules: 388 kcal, carbohydrate 95.9 g, of which sugars 70.5 g.
  One piece: 23 kcal.
  An estimate from the recipe, neither an analysis nor legal advice. Food law
    differs and changes: check with your authority before you print or claim
    anything. No figure here is about an illness.

`;
