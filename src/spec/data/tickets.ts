import type { KeyRows } from '../key-row.js';

export const ticketsKeys = [
  { type: 'Tickets', about: 'Each pass with the same load, fuel and people. What the passes given do not contain is said, never guessed.', rows: [
    ['division', 'what one platform rounds to', "the ticket, or the scale's plate", '20 lb', ''],
    ['barsOn', 'coupled, spring bars working', 'what the bars move'],
    ['barsOff', 'coupled, bars slack, or none fitted', 'the tongue load'],
    ['trailerAlone', 'the trailer unhitched, axles and jack together', 'ticket', '12,660 lb', 'the truck alone must be there for the tongue'],
    ['truckAlone', 'the truck, trailer dropped', 'the trailer alone must be there for the tongue'],
  ] },
  { type: 'Pass', rows: [
    ['steer', 'front axle of the truck', 'ticket', '4,840 lb', ''],
    ['drive', 'rear axle of the truck', 'ticket', '5,420 lb', ''],
    ['trailer', "all the trailer's axles", 'ticket', '11,260 lb', ''],
  ] },
  { type: 'TruckAlone', rows: [
    ['steer', 'front axle', 'ticket', '5,140 lb', ''],
    ['drive', 'rear axle', 'ticket', '3,720 lb', ''],
  ] },
] as const satisfies readonly KeyRows[];
