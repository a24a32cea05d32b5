/** The cautions printed under every report and leaflet. */

/** The usual cautions; every report and leaflet ends with them. */
export const cautions: readonly string[] = [
  'Ratings are what the labels, moldings and stampings say. No figure here replaces one, and the lowest-rated part governs.',
  'Weigh the loaded combination and the tongue before the road; stated and built-up weights drift.',
  'A static reckoning: road loads, wear, corrosion, fatigue and repairs are outside it. No safe speed follows from it.',
  'State and local rules on brakes, chains, licences and registration vary: ask the authority that enforces them.',
  'Structural changes and re-ratings belong to the maker, a registered alterer or a licensed engineer.',
];

/** The cautions in the words that half a page has room for. */
export const shortCaution =
  'Not a certificate. Labels, moldings and the maker govern, and the lowest-rated part counts. Weigh the loaded combination and the tongue before the road. A static calculation: wear, corrosion, repairs and road loads are outside it, and no safe speed follows from it. State and local rules vary: ask the authority. Structural changes and re-ratings belong to the maker, a registered alterer or a licensed engineer.';
