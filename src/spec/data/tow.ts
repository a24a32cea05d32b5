import type { KeyRows } from '../key-row.js';

export const towKeys = [
  { type: 'Tow', rows: [
    ['front', 'front axle of the truck alone, people and cargo aboard', 'scale', { text: '5,150 lb', basis: 'scale' }, 'truck GVWR, both GAWRs, GCWR, spring bars'],
    ['rear', 'rear axle, likewise', 'scale', { text: '3,650 lb', basis: 'scale' }, 'truck GVWR, both GAWRs, GCWR, spring bars'],
    ['gvwr', 'gross vehicle weight rating of the truck', 'certification label, door jamb', '14,000 lb', 'truck GVWR; lines that need it cannot be told'],
    ['frontGawr', 'front axle rating', 'certification label', '6,000 lb', 'front axle against its GAWR'],
    ['rearGawr', 'rear axle rating', 'certification label', '9,650 lb', 'rear axle against its GAWR'],
    ['gcwr', 'combination rating by the vehicle maker', "owner's manual or towing guide", '30,000 lb', 'combination against GCWR'],
    ['wheelbase', 'front axle to rear axle', 'tape or manual', '176 in', 'both GAWRs, unless the overhang is `unknown`; spring bars'],
    ['overhang', `rear axle to ball; negative for a gooseneck ahead of it; \`"unknown"\` takes the makers' bound of half a wheelbase and says so`, 'tape', '54 in', 'both GAWRs, spring bars'],
    ['hitchHardware', 'hitch parts that were not on the truck when it was scaled', 'scale or sheet', '60 lb', 'taken as on the truck, and that is said'],
    ['receiver', 'ratings of the receiver, for the way it is used', 'receiver against gross and tongue'],
    ['ballMount', 'ratings of the ball mount', 'ball mount against gross and tongue'],
    ['ball', 'rating of the ball', 'ball against gross'],
    ['trailerRating', 'the heaviest trailer, by the vehicle maker', "owner's manual, for this build", '18,000 lb', 'trailer tow rating'],
    ['tongueRating', 'the greatest tongue load, by the vehicle maker', "owner's manual", '1,800 lb', "tongue against the vehicle's rating"],
    ['placard', 'occupant and cargo placard', 'placard against people, cargo and tongue'],
    ['bars', 'weight distributing spring bars', 'no bars: the axles as they are'],
  ] },
  { type: 'Receiver', rows: [
    ['gross', 'gross trailer rating', 'label on the receiver', '20,000 lb', 'gross against receiver'],
    ['tongue', 'tongue rating', 'label on the receiver', '2,000 lb', 'tongue against receiver'],
  ] },
  { type: 'BallMount', rows: [
    ['gross', 'gross trailer rating', 'stamped on the mount', '16,000 lb', 'gross against ball mount'],
    ['tongue', 'tongue rating', 'stamped on the mount', '1,600 lb', 'tongue against ball mount'],
  ] },
  { type: 'Ball', rows: [
    ['gross', 'gross trailer rating', 'stamped on top of the ball', '16,000 lb', 'gross against ball'],
  ] },
  { type: 'Placard', rows: [
    ['limit', 'what occupants and cargo should never exceed', 'placard in the door opening', '4,200 lb', 'the placard'],
    ['people', 'people aboard', 'ask them, or a scale', '400 lb', 'the placard'],
    ['cargo', 'cargo in the truck, the tongue left out', 'scale', '250 lb', 'the placard'],
  ] },
  { type: 'Bars', rows: [
    ['restore', 'share of what the front axle lost that the bars give back', 'how they are set; three scale passes tell it', '50 %', ''],
  ] },
] as const satisfies readonly KeyRows[];
