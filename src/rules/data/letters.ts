/** What the agency letters say about GVWR, GAWR and tongue load. Letters are guidance; points in our words. */
import type { AgencyLetter } from '../federal/agency-letter.js';

export const letterRows = [
  { id: 'nht72-6.32', dated: '1972-01-04', about: 'trailers', speaksOf: 'trailer', topic: 'tongue', point: 'The tongue weight may be taken off in arriving at the GAWR a trailer needs; a GAWR is a rating and may be above the axle load.' },
  { id: 'nht75-5.2', dated: '1975-05-27', about: 'semitrailer', speaksOf: 'trailer', topic: 'GVWR', point: 'GVWR is the empty trailer and its rated cargo; part of it may rest on the tractor, so GVWR may be well above the axle rating.' },
  { id: 'nht76-3.20', dated: '1976-01-15', about: 'boat trailer', speaksOf: 'trailer', topic: 'GVWR and GAWR', point: 'GVWR is judged as if coupled and includes the share the tow vehicle carries; GAWR may be below it. An axle load above GAWR at GVWR, coupled, is a safety-related defect.' },
  { id: 'nht71-5.63', dated: '1971-10-14', about: 'semitrailer', speaksOf: 'trailer', topic: 'GVWR', point: 'The GVWR of a semitrailer stands without regard to what a given tractor can carry, as long as its own weight is in it.', remark: 'The letter it answers is printed with a later date, so one of the two is wrong.' },
  { id: 'nht72-4.48', dated: '1972-12-13', about: 'trailer label', speaksOf: 'trailer', topic: 'label', point: 'Each GAWR stands on the label by itself, even when the axles are alike.' },
  { id: 'aiam0613', dated: '1971', about: 'vehicles in general', speaksOf: 'general', topic: 'sum of GAWRs', point: 'GVWR is at least unloaded weight, rated cargo and 150 lb a seat, and should not be above the sum of the GAWRs; the weakest part governs.', remark: 'Its own date was not read. General: written to a State purchaser.' },
  { id: 'aiam1472', dated: '1974', about: 'vehicles in general', speaksOf: 'general', topic: 'sum of GAWRs', point: 'The GAWRs must add up to the GVWR at least, and may add up to more; a GAWR holds at the tire-ground interface for tires, wheels, brakes and suspension.', remark: 'Taken literally it contradicts nht75-5.2 and nht76-3.20 for a trailer whose hitch carries load.' },
  { id: 'nht80-2.14', dated: '1980-04-23', about: 'truck chassis-cab', speaksOf: 'general', topic: 'sum of GAWRs', point: 'Any GAWR will do as long as the sum is not below the GVWR; a weaker frame governs.', remark: 'Of a truck: nothing of it rests on another vehicle.' },
] as const satisfies readonly AgencyLetter[];
