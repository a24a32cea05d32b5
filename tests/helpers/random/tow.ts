/** What tows the trailer of a random spec, what the scale printed, and the facts that rules ask. */
import { readFileSync } from 'node:fs';
import type { Plan } from './plan.js';
import { ratingFor } from './plan.js';

const local = readFileSync(new URL('../../../examples/local-rules.json', import.meta.url), 'utf8');

function hitchPartsOf(plan: Plan): object {
  const { chance, write, gross, tongue, detail } = plan;
  const part = (): object => ({
    ...chance.maybe(detail, 'gross', () => write.weight(ratingFor(plan, gross, 500))),
    ...chance.maybe(detail, 'tongue', () => write.weight(ratingFor(plan, tongue, 50))),
  });
  return {
    ...(plan.gooseneck
      ? {}
      : { ...chance.maybe(detail, 'receiver', part), ...chance.maybe(detail, 'ballMount', part) }),
    ...chance.maybe(detail, 'ball', () => ({ gross: write.weight(ratingFor(plan, gross, 500)) })),
  };
}

/** A truck that might tow it, told in part or in full. */
export function towOf(plan: Plan): object {
  const { chance, write, gross, tongue, detail, gooseneck } = plan;
  const size = gross > 12000 ? 1.2 : 1;
  const front = chance.whole(3400, 4600, 20) * size;
  const rear = chance.whole(2400, 3600, 20) * size;
  const told = (key: string, load: number, step: number): object =>
    chance.maybe(detail, key, () => write.weight(ratingFor(plan, load, step)));
  return {
    ...(chance.happens(detail) ? { front: write.weight(Math.round(front)), rear: write.weight(Math.round(rear)) } : {}),
    ...told('gvwr', front + rear + tongue, 100),
    ...told('frontGawr', front, 50),
    ...told('rearGawr', rear + tongue * 1.3, 50),
    ...told('gcwr', front + rear + gross, 500),
    ...chance.maybe(detail, 'wheelbase', () => write.length(chance.whole(120, 176, 2))),
    ...chance.maybe(detail, 'overhang', () => {
      if (chance.happens(8)) return 'unknown';
      return write.length(gooseneck ? chance.whole(-6, -2) : chance.whole(44, 60));
    }),
    ...chance.maybe(40, 'hitchHardware', () => write.weight(chance.whole(30, 110, 10))),
    ...hitchPartsOf(plan),
    ...told('trailerRating', gross, 100),
    ...told('tongueRating', tongue, 50),
    ...chance.maybe(detail * 0.6, 'placard', () => ({
      limit: write.weight(ratingFor(plan, tongue + 700, 50)),
      ...chance.maybe(90, 'people', () => write.weight(chance.whole(150, 700, 10))),
      ...chance.maybe(90, 'cargo', () => write.weight(chance.whole(0, 400, 10))),
    })),
    ...(gooseneck ? {} : chance.maybe(30, 'bars', () => ({ restore: `${chance.whole(25, 95, 5)} %` }))),
  };
}

/** Facts for rules, sometimes with the invented local file. */
export function rulesOf({ chance, write, gross }: Plan): object {
  return {
    ...chance.maybe(70, 'commercial', () => chance.happens(60)),
    ...chance.maybe(70, 'interstate', () => chance.happens(50)),
    ...chance.maybe(60, 'actualWithinRatings', () => chance.happens(70)),
    ...chance.maybe(30, 'labelGcwr', () => (chance.happens(40) ? 'not shown' : write.weight(gross + 16000))),
    ...chance.maybe(15, 'local', () => JSON.parse(local) as unknown),
    ...chance.maybe(40, 'axleGroups', () => ({
      tie: chance.pick(['down', 'up']),
      lengthRounding: chance.pick(['none', 'nearest foot, halves up', 'nearest foot, halves down']),
    })),
  };
}

/** Coupled passes over a scale with a division of 20 lb. */
export function ticketsOf({ chance, gross, tongue }: Plan): object {
  const rounded = (pounds: number): string => `${Math.max(0, Math.round(pounds / 20) * 20)} lb`;
  const [steer, drive] = [chance.whole(3600, 4600, 20), chance.whole(2600, 3600, 20)];
  const pass = (back: number): object => ({
    steer: rounded(steer - tongue * (0.4 - back)),
    drive: rounded(drive + tongue * 1.4 - tongue * back * 1.5),
    trailer: rounded(gross - tongue + tongue * back * 0.5),
  });
  return {
    division: '20 lb',
    ...chance.maybe(50, 'barsOn', () => pass(0.2)),
    barsOff: pass(0),
    ...chance.maybe(50, 'trailerAlone', () => rounded(gross)),
    ...chance.maybe(60, 'truckAlone', () => ({ steer: rounded(steer), drive: rounded(drive) })),
  };
}
