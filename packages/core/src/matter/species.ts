/**
 * A pure substance a model can know something about. Ingredients are what one buys; species are
 * what is in them. The solids of a starch syrup are not a species: see `Solid`.
 */
export type SpeciesId =
  | 'sucrose'
  | 'glucose'
  | 'fructose'
  | 'maltose'
  | 'lactose'
  | 'trehalose'
  | 'isomaltulose'
  | 'allulose'
  | 'tagatose'
  | 'syrup-oligosaccharides'
  | 'isomalt'
  | 'maltitol'
  | 'xylitol'
  | 'sorbitol'
  | 'mannitol'
  | 'erythritol'
  | 'lactitol'
  | 'glycerol'
  | 'propylene-glycol'
  | 'hydrogenated-oligosaccharides'
  | 'polydextrose'
  | 'inulin'
  | 'citric-acid'
  | 'malic-acid'
  | 'tartaric-acid'
  | 'lactic-acid'
  | 'potassium-hydrogen-tartrate'
  | 'sodium-citrate'
  | 'sodium-lactate'
  | 'sodium-bicarbonate'
  | 'sodium-chloride'
  | 'sucralose'
  | 'acesulfame-k'
  | 'aspartame'
  | 'saccharin'
  | 'steviol-glycosides'
  | 'protein'
  | 'ash';

/** What is weighed but not dissolved in the water of the mass. */
export type ApartKind = 'fat' | 'oil' | 'ethanol' | 'pigment' | 'insoluble';
