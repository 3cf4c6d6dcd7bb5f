// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** What goes wrong, how to see it, what to do. */
export const practiceDefectsTable = {
  id: 'practice-defects',
  title: 'What goes wrong, how to see it, what to do',
  source: {
    authors: 'Common practice',
    year: 'n.d.',
    title: 'Common practice of the trade',
    locator: 'none',
  },
  grade: 'practice',
  did: 'Common practice of the trade; no publication stands behind it.',
  units: {},
  rows: [
    { defect: 'graining in the pan', sign: 'sudden cloud, sandy crust, temperature plateaus', causes: 'undissolved crystals, stirring after the boil, no doctor, splash crystals on the wall, late sugar', computed: 'sucrose supersaturation at pour temperature; doctor solids %', threshold: 'non-sucrose solids < 15-20 % of solids, or sugar added after boil', prevent: 'dissolve at 33 % water, wash the wall or lid 2-3 min, 25-40 % glucose solids, clean tools', remedy: 'never pour water on hot mass: let it set or cool below 100 °c, break it, put the pieces into hot water (20-30 % of its mass), dissolve fully, boil again: once, at most twice (each boil adds colour and invert)' },
    { defect: 'graining in storage (bloom from within)', sign: 'opaque skin moving inwards, short bite', causes: 'low doctor, moisture pick-up, Tg below store temperature', computed: 'T_store - Tg of the core; critical humidity for the surface; sucrose share', threshold: 'T_store - Tg > 0 K; sucrose > 70-75 % of solids', prevent: 'lower moisture, 40-50 % glucose solids, wrap', remedy: 'none for the piece; up to 5-10 % of the next batch may be broken sweets dissolved in its cold water before the boil' },
    { defect: 'frosting / surface bloom', sign: 'white dusty film', causes: 'RH cycling: surface dissolves then dries', computed: 'room humidity against the critical humidity', threshold: 'room crosses the critical humidity (about 0.30 for 60:40 at 25 °C) daily', prevent: 'wrap airtight, hold room relative humidity below 0.35-0.40', remedy: 'oil polish hides it; else never pour water on hot mass: let it set or cool below 100 °c, break it, put the pieces into hot water, boil again' },
    { defect: 'stickiness', sign: 'tacky, wrapper adheres', causes: 'room above the critical humidity, too much invert or high-DE syrup, too much water, acid cooked in', computed: 'surface Tg at the room humidity; room against critical humidity; reducing sugars', threshold: 'room relative humidity above the critical humidity (Tg = T): 60:40 at 25 °C 0.30; sticking starts at 0.36 (Tg = T - 10 K), full at 0.42 (Tg = T - 20 K). Moisture is not a gate of its own: it is already in Tg. Reducing sugars > 18-20 % (common practice)', prevent: 'cook 2-3 K higher, lower DE, acid last, wrap at < 40 °C', remedy: 'never pour water on hot mass: let it set or cool below 100 °c, break it, put the pieces into hot water (20 %), boil again; dusting is cosmetic' },
    { defect: 'weeping / sour weep', sign: 'acid syrup droplets under wrapper', causes: 'invert from hot acid, hygroscopic acid at surface, acid not dissolved', computed: 'inverted sucrose % after addition time; acid %', threshold: 'inversion > 3-5 % of sucrose (middle estimate, +- a factor 3); acid > 2 %', prevent: 'rest until clear first, acid last at 115-122 °C and pour at once, buffered acid (citric + 10-20 % sodium citrate), malic/tartaric less hygroscopic', remedy: 'none for the piece; lower-acid stock by re-dissolving: never pour water on hot mass: let it set or cool below 100 °c, break it, put the pieces into hot water' },
    { defect: 'cloudiness, haze', sign: 'milky glass, not sandy', causes: 'air, undissolved acid, proteins or minerals in water, isomalt crystals, too much stirring', computed: 'undissolved acid load; water hardness', threshold: 'acid > solubility at the pour', prevent: 'soft water, fine acid, let bubbles clear before the acid goes in, strain', remedy: 'isomalt: melt again gently, dry; sugar: never pour water on hot mass: let it set or cool below 100 °c, break it, put the pieces into hot water, boil again' },
    { defect: 'yellow or brown tint', sign: 'tint vs water-white reference', causes: 'cook above 155 °C, slow cook, invert + amino acids, dark syrup, dirty pan, uneven heat', computed: 'time above 140 °C; colour index', threshold: '> 8-10 min above 140 °C', prevent: 'fast cook, small depth, glucose low in protein, vacuum only in equipment built for it, lower heat near the end, stop at the computed target', remedy: 'mask with amber flavour; cannot be undone' },
    { defect: 'bitter / burnt', sign: 'acrid, dark flecks', causes: '> 165-170 °C, hot spots, thermometer low', computed: 'T and minutes above 165 °C', threshold: 'any part > 170 °C', prevent: 'lower heat from 140 °C, even flame, stop 2-3 K early', remedy: 'discard' },
    { defect: 'soft, chewy, will not set', sign: 'bends, dents warm', causes: 'undercooked, thermometer reads high, altitude correction missed, water from colour or flavour', computed: 'moisture; Tg - room', threshold: 'even the high end of Tg below the room: will fail; middle below room + 5 K: may fail', prevent: 'check calibration, cook to moisture not time', remedy: 'never pour water on hot mass: let it set or cool below 100 °c, break it, put the pieces into hot water (10-15 %), boil again' },
    { defect: 'cold flow', sign: 'sharp edges round off, lollipop droops in days', causes: 'Tg close to the store temperature; high DE, sorbitol/xylitol, moisture', computed: 'margin m = Tg - T_store, at the low, middle and high end of the Tg band', threshold: 'will fail: even the high Tg is below the store; may fail: middle below store + 5 K; little in reserve: middle below store + 15 K. Flow visible in weeks needs about 1e9 Pa s, that is a store about 10 K ABOVE Tg; the reserve covers the model (+-8 K), 0.5 % of pick-up (about 5 K) and a hot afternoon', prevent: 'lower DE, drier, less xylitol (ten points = 11 K), cooler store', remedy: 'none' },
    { defect: 'cracking, crazing', sign: 'cracks on cooling or in mould', causes: 'thermal shock, cold metal mould, thick piece, dry low-doctor glass, handling when brittle', computed: 'wall cooling rate; thickness^2', threshold: '> 10 K/min through Tg, thickness > 12 mm', prevent: 'preheat mould 35-45 °C, slow air, more glucose solids', remedy: 're-melt' },
    { defect: 'bubbles', sign: 'spheres or tails in glass', causes: 'poured while boiling, whipped-in air, wet mould, acid + carbonate, late water flavour', computed: 'steam release at addition: water / latent heat', threshold: 'additive water > 0.5 % or pour > 145 °C', prevent: 'rest about 5 min off the heat until clear, then colour and flavour; tap moulds, dry moulds, oil flavours', remedy: 'none for the piece; a flame may be passed only over a bare metal or stone mould with no alcohol flavour in the mass, never over silicone, plastic or paper, never near fresh alcohol or oil flavour' },
    { defect: 'seams, strings', sign: 'tails, flash', causes: 'pour too cold', computed: 'viscosity vs T', threshold: 'mass below the hand-pouring floor: viscosity above about 100 Pa s (Tg + 62 K)', prevent: 'pour at 125-135 °C; reheat', remedy: 'trim warm' },
    { defect: 'flat taste, flavour loss', sign: 'weak', causes: 'flavour added too hot, volatile', computed: 'T at addition', threshold: '> 135-140 °C', prevent: 'add at 110-125 °C', remedy: 'none' },
    { defect: 'uneven sourness', sign: 'hot spots of acid', causes: 'granular acid not dispersed, added too cold', computed: 'acid particle size, mixing time', threshold: 'mass below the hand-pouring floor (Tg + 62 K)', prevent: 'fine or 50 % solution, fold 30-60 s', remedy: 'knead on slab' },
    { defect: 'sticking to mould', sign: 'tears', causes: 'no release, wet mould, syrup sticky, demoulded hot', computed: 'T at demould', threshold: 'mass above Tg at demould', prevent: 'release oil, dry mould, demould at or below Tg (wrap 10 K below)', remedy: 'wait until it is at room temperature and flex the mould; do not chill: condensation makes it sticky, and the shock cracks it' },
    { defect: 'wrong piece count', sign: 'over / short', causes: 'losses, density, cavity volume', computed: 'yield equation', threshold: 'error > 5 %', prevent: 'weigh charge, measure cavity with water', remedy: '-' },
    { defect: 'rubbery isomalt / sugar-free piece', sign: 'dull surface, clouding within days', causes: 'moisture > 2 %, seeds of GPM crystals, humid room', computed: 'T_store - Tg', threshold: 'margin rule as under cold flow', prevent: 'cook past about 165 °C, no stirring below 130, silica gel', remedy: 'melt again gently without adding water; never pour water on hot mass: let it set or cool below 100 °c, break it, put the pieces into hot water if it must be dissolved' },
    { defect: 'foam-over', sign: 'rises in pan', causes: 'milk, carbonate, too much water-based colour, small pan', computed: 'volume ratio', threshold: 'charge > 1/3 of pan volume', prevent: 'pan 3-4x charge', remedy: 'remove from heat' },
  ],
  notes: [
    'Re-dissolving once or twice at most: every boil adds colour and invert.',
    'Water on a mass of 150 °C flashes and throws it out of the pan.',
  ],
  check: {
    rows: 19,
    sums: {
    },
  },
} as const satisfies EvidenceTable;
