/** What a scale printed, pass by pass, and what one platform rounds to. */
import { weightOf } from './codec/figures.js';
import type { Coded } from './codec/kind.js';
import { record } from './codec/record.js';
import type { DecodedTickets, TicketsInput } from './types/tickets.js';

const pass = record(
  'Pass',
  'a coupled pass over the scale',
  {
    steer: weightOf('steer axle', 'scale'),
    drive: weightOf('drive axle', 'scale'),
    trailer: weightOf('trailer axles', 'scale'),
  },
  {},
);

/** The tickets of a scale. */
export const ticketsCodec: Coded<DecodedTickets, TicketsInput> = record(
  'Tickets',
  'scale tickets',
  { division: weightOf('division of the scale', 'label', 0.1) },
  {
    barsOn: pass,
    barsOff: pass,
    trailerAlone: weightOf('trailer alone', 'scale'),
    truckAlone: record(
      'TruckAlone',
      'the truck alone on the scale',
      { steer: weightOf('steer axle, alone', 'scale'), drive: weightOf('drive axle, alone', 'scale') },
      {},
    ),
  },
);
