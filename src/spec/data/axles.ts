import type { KeyRows } from '../key-row.js';

export const axlesKeys = [
  { type: 'Axle', rows: [
    ['at', 'coupler to the middle of this axle', 'tape along the frame', '187 in', 'axle loads and tongue, and whatever hangs on them'],
    ['gawr', 'gross axle weight rating', 'certification label', '7,000 lb', 'parts against the GAWR, and brakes; the weakest part stands in for it'],
    ['beam', 'rating of the axle beam, the whole axle', "axle maker's plate on the tube", '7,000 lb', 'beam against GAWR'],
    ['springs', 'rating of the springs of this axle, both sides together', "spring maker's sheet", '7,200 lb', 'springs against GAWR'],
    ['hubs', 'rating of hubs and bearings, both sides together', "hub maker's sheet; never from the bolt circle", '7,000 lb', 'hubs against GAWR'],
    ['wheels', 'wheels of this axle', 'wheels against GAWR'],
    ['tires', 'tires of this axle', 'tires against GAWR, load of each tire, pressure needed'],
    ['rate', 'spring rate of the axle, both sides together', "spring or axle maker's sheet", '2200 lb/in', 'with more than two independent axles the sharing cannot be answered'],
    ['brakes', 'the two brakes of this axle', 'the axle counts as unbraked; without any, the brakes are not checked'],
  ] },
  { type: 'Wheels', rows: [
    ['each', 'load rating of one wheel', 'stamped on the wheel', '3,750 lb', ''],
    ['count', 'wheels on this axle, both sides; one for each tire', 'count them', 2, ''],
  ] },
  { type: 'Tires', rows: [
    ['designation', 'size, and what stands with it', 'sidewall', 'ST235/80R16 LRE', ''],
    ['count', 'tires on this axle, both sides: 2 when single, 4 or 8 when dual', 'count them', 2, ''],
    ['fitment', '`single`, or `dual` for two side by side', 'look', 'single', ''],
    ['molded', 'maximum load and pressure as molded; it outranks index and table', 'the load index, else a published table, says what the tire carries'],
    ['pressure', 'the cold pressure it runs at', 'a gauge, tires cold', '80 psi', 'tires at the pressure they run: their full rating is taken, and it is said'],
  ] },
  { type: 'MoldedLoad', rows: [
    ['single', 'molded maximum load, single', 'sidewall', '3,520 lb', 'load index or table is used for single tires'],
    ['dual', 'molded maximum load, dual', 'sidewall', '3,080 lb', 'for dual tires: index or table, but never one where a single load alone is molded'],
    ['pressure', 'the cold pressure molded beside the load', 'sidewall', '80 psi', 'the tables say what the tire carries as it runs'],
  ] },
  { type: 'Brakes', rows: [
    ['left', 'rating of the left brake', "brake maker's sheet; the drum size does not give it", '3,500 lb', ''],
    ['right', 'rating of the right brake', "brake maker's sheet", '3,500 lb', ''],
  ] },
] as const satisfies readonly KeyRows[];
