import type { KeyRows } from '../key-row.js';

export const trailerKeys = [
  { type: 'Trailer', rows: [
    ['hitch', '`ball` for a coupler behind the truck, `gooseneck` for one over its rear axle; a fifth wheel is not in here', 'look', 'ball', ''],
    ['axles', 'the axles, from the front', ''],
    ['name', 'a name for the report', 'you choose it', 'Marlow Yard TD-14', "the report is headed by the spec's name"],
    ['gvwr', 'gross vehicle weight rating of the whole laden trailer', 'certification label, forward left side', '14,000 lb', 'gross against GVWR; payload is then only what the other limits allow'],
    ['sharing', '`equalised` for rockers or walking beams, `independent` for torsion axles', 'look at the suspension', 'equalised', 'with two or more axles: axle loads, tongue, and whatever hangs on them'],
    ['axleGroup', 'all axles together', 'the axles stand where each of them says'],
    ['curb', 'the empty trailer', 'gross weight, payload, axle loads, the tow side'],
    ['coupler', 'ratings of the coupler', 'coupler against gross and tongue'],
    ['chains', 'the safety chains', 'chains against gross'],
    ['jack', 'the tongue jack', 'jack against tongue'],
    ['anchors', 'the anchor points for tiedowns', 'a tiedown is as strong as its own parts'],
    ['deck', 'the ends of the deck', 'where the machine may stand'],
    ['ramps', 'the ramps', 'ramps against the machine, and their angle'],
    ['rearLegs', 'rating of the legs set under the tail before anything climbs on, together', "stamping, maker's sheet", '4,000 lb', 'loading that pulls the ball up asks attention'],
    ['width', 'overall width, rigid fenders in it', 'tape', '102 in', 'lines on lamps, tape and width cannot be told'],
    ['length', 'overall length', 'tape', '26 ft', 'the line on side markers cannot be told'],
    ['practice', 'whose practice the usual tongue band is: `US and Canada`, `Europe` or `Australia`', 'where it is towed', 'Europe', 'the band of the US and Canada is taken; a trailer told in kilograms is asked'],
    ['guideline', 'the tongue band its maker asks for', 'the usual band of its kind of hitch is taken, with its source'],
    ['track', 'across the trailer, middle to middle of the tires (of the pair, when dual)', 'tape', '90 in', 'how the load stands side to side'],
    ['ballAboveLevel', 'how far the ball stands above the height at which the trailer rides level; negative when below', 'tape at both, loaded', '1.5 in', 'independent axles, and the tongue load that they change, are not asked off level'],
  ] },
  { type: 'AxleGroupPlace', rows: [
    ['at', 'coupler to the middle of the axles; it moves all of them together, their spacings as listed', 'drawing', '204 in', 'the axles stand where each of them says'],
  ] },
  { type: 'Coupler', rows: [
    ['gross', 'the heaviest trailer it may couple', 'stamped on the coupler', '15,000 lb', 'gross against coupler'],
    ['tongue', 'the greatest vertical load; S on a European plate', "stamped on the coupler, or its maker's sheet", '2,000 lb', 'tongue against coupler'],
    ['d', 'D of a European coupling: the pull between vehicle and trailer', 'plate of the coupling', '17.2 kN', 'D is not asked'],
    ['dc', 'Dc of a European coupling: the pull of a centre-axle trailer', 'plate of the coupling', '17.5 kN', 'Dc is not asked'],
    ['v', 'V of a European coupling: the bounce of a centre-axle trailer above 3.5 t', 'plate of the coupling', '24 kN', 'V is not asked'],
  ] },
  { type: 'Chains', rows: [
    ['each', 'breaking strength of one chain with its hook and anchor, not a working load limit', 'tag or certificate', '16,200 lb', ''],
    ['count', 'one or two', 'count them', 2, ''],
  ] },
  { type: 'Jack', rows: [
    ['rating', 'what it lifts', 'stamped on the jack', '5,000 lb', ''],
    ['at', 'behind the ball', 'tape', '20 in', ''],
    ['margin', 'what its load is multiplied by before it is compared; 100 % for none. Nobody prints one: choose', 'your practice', '125 %', ''],
  ] },
  { type: 'Anchors', rows: [
    ['each', 'working load limit marked on one anchor point; the weakest, where they differ', "marking, or the maker's sheet", '5,000 lb', ''],
    ['count', 'how many there are', 'count them', 8, ''],
  ] },
  { type: 'DeckPlan', rows: [
    ['front', 'front end of what a machine may stand on', 'tape', '62 in', ''],
    ['rear', 'rear end', 'tape', '302 in', ''],
    ['width', 'width of what a machine may stand on, away from the fenders', 'tape', '82 in', 'whether a piece of cargo is wider than the deck'],
    ['betweenFenders', 'clear width between the fenders', 'tape', '80 in', 'whether a piece of cargo passes between the fenders'],
    ['overFenders', 'whether cargo may stand over the fenders: a deck above the wheels, or fenders made to be driven over', 'look', false, 'taken as not'],
  ] },
  { type: 'Ramps', rows: [
    ['length', 'along the surface, ground to deck edge', 'tape', '66 in', ''],
    ['height', 'ground to the edge the ramps hang on, as the trailer stands when loading', 'tape', '16 in', ''],
    ['rating', 'rating of the pair', 'plate on the ramp', '14,000 lb', 'ramps against the machine'],
    ['basis', 'what the rating speaks of: `axle` for the heaviest machine axle, `machine` for the whole of it', 'printed with the rating', 'machine', 'ramps against the machine: a rating without its basis is none'],
    ['setting', 'where the ramps can be set', 'where to set them is not answered'],
    ['dovetail', 'a tail that slopes before the ramps begin', 'the deck counts as straight'],
  ] },
  { type: 'RampSetting', rows: [
    ['width', 'width of one ramp', 'tape', '18 in', ''],
    ['margin', 'how much ramp is to show on each side of the tire', 'your practice; zero for none', '1 in', ''],
    ['closest', 'closest setting, middle to middle', 'tape, in the slots', '40 in', ''],
    ['widest', 'widest setting, middle to middle', 'tape, in the slots', '70 in', ''],
  ] },
  { type: 'Dovetail', rows: [
    ['angle', 'how far it falls from the deck', 'angle finder', '8 deg', ''],
    ['length', 'along its surface', 'tape', '60 in', ''],
  ] },
  { type: 'TongueBand', rows: [
    ['low', 'least tongue share', "trailer maker's manual", '10 %', ''],
    ['high', 'greatest tongue share', "trailer maker's manual", '15 %', ''],
    ['source', 'who says so', 'title of the manual', "owner's manual, 2026", ''],
  ] },
] as const satisfies readonly KeyRows[];
