import type { KeyRows } from '../key-row.js';

export const cargoKeys = [
  { type: 'Cargo', rows: [
    ['name', 'what it is', 'you choose it', 'excavator', ''],
    ['weight', 'with attachment, fuel and whatever is on it', 'scale; else plate or sheet', '9,000 lb', ''],
    ['at', 'where its balance point stands; not together with `front`', 'tape', '182 in', '`front` and `balancePoint` must say it; with neither, axle loads and tongue'],
    ['front', 'where its front face stands', 'tape', '122 in', '`at` must be given'],
    ['balancePoint', 'balance point behind its front face', "two axle weighings, or the maker's sheet", '60 in', '`at` must be given; where it may stand is not answered'],
    ['length', 'its length over all', 'tape', '168 in', 'where it may stand, and its tiedowns'],
    ['width', 'its width over all, as it stands on the deck', 'tape', '78 in', 'whether it fits between the fenders and on the deck'],
    ['rightOfMiddle', 'how far its balance point stands right of the middle of the trailer; negative to the left', 'tape', '1 in', 'how the load stands side to side'],
    ['uncertainty', 'how far the balance point may truly lie from that, either way', 'your judgement; zero when weighed', '2 in', 'it is taken as exact, and that is said'],
    ['wheelbase', 'of a machine on wheels, axle to axle', 'tape, or its sheet', '50 in', 'whether it hangs up at the edge of the deck'],
    ['lowPoint', 'its lowest point between the axles', 'whether it hangs up at the edge of the deck'],
    ['gauges', 'its axles as they stand on the ramps, from its front', 'where to set the ramps'],
    ['axles', 'axle loads of the machine itself, from its front', 'scale, one axle at a time', ['3,700 lb', '2,500 lb'], 'ramps rated by axle are not checked'],
    ['tiedowns', 'what ties it down', 'its tiedowns'],
    ['section', 'the section it is tied by: `general`, `heavy equipment` or `light vehicle`; below 10,000 lb a choice', '49 CFR 393', 'heavy equipment', 'its tiedowns'],
    ['blockedForward', 'held against moving forward by a headboard or other means', 'look', false, 'taken as not blocked'],
  ] },
  { type: 'MachineAxle', rows: [
    ['gauge', 'middle to middle of its tires or tracks; `0 in` for one middle wheel', 'tape', '54 in', ''],
    ['tireWidth', 'width of one tire or track', 'tape', '12 in', ''],
  ] },
  { type: 'LowPoint', rows: [
    ['behindFrontAxle', "behind the machine's front axle; a flat belly is worst in the middle of the wheelbase", 'tape', '25 in', ''],
    ['height', 'above the plane its tires stand on', 'tape', '8 in', ''],
  ] },
  { type: 'Tiedown', about: 'One of `marked`, `chain` and `webbing`; a marking outranks the table.', rows: [
    ['runs', '`direct` from trailer to cargo, back to the `same side`, or across to the `other side`', 'look', 'direct', ''],
    ['marked', 'working load limit marked on its weakest part', 'tag of chain, strap, binder, hook or anchor', '5,400 lb', 'the printed table of chain or webbing is used'],
    ['chain', 'chain by size and grade', '`marked` or `webbing` must say what it is'],
    ['webbing', 'width of the strap in inches, as text', 'tape', '2', '`marked` or `chain` must say what it is'],
  ] },
  { type: 'Chain', rows: [
    ['size', 'nominal size in inches, as text', "gauge, or the maker's tag", '3/8', ''],
    ['grade', '`30`, `43`, `70`, `80`, `100`, or `unmarked`, which counts as 30', 'embossed on the links', '70', ''],
  ] },
] as const satisfies readonly KeyRows[];
