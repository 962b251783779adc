import { type DeckMark, type DeckPlan, hundredths, type Touch } from 'backhalf';

/** A touch that a simulated thumb made, and whose mark it truly was; a second tap names the same mark. */
export interface TrueTouch extends Touch {
  readonly swimmer: number;
  readonly rep: number;
  readonly kind: DeckMark;
  readonly double: boolean;
}

/** A small seeded generator, so that a run can be repeated anywhere: mulberry32. */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A set swum and timed: one lane of 8, 5 s apart, 20 × 100 on 1:40. */
export function simulate(seed: number, spread: number): { plan: DeckPlan; touches: TrueTouch[] } {
  const random = seeded(seed);
  const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const means = Array.from({ length: 8 }, () => 6200 + 1800 * random()).sort((a, b) => a - b);
  const plan: DeckPlan = {
    swimmers: means.map((mean, i) => ({
      name: `S${i}`,
      repTime: hundredths(Math.round(mean * (1 + 0.02 * normal()))),
    })),
    reps: 20,
    repDistance: 100,
    sendOff: hundredths(10_000),
    stagger: hundredths(500),
    marks: 'halfway-and-finish',
  };
  const touches: TrueTouch[] = [];
  means.forEach((mean, swimmer) => {
    for (let rep = 1; rep <= 20; rep++) {
      const time = mean * (1 + spread * normal());
      const half = time * (0.485 + 0.005 * normal());
      const start = swimmer * 500 + (rep - 1) * 10_000;
      const marks: [DeckMark, number][] = [
        ['halfway', half],
        ['finish', time],
      ];
      for (const [kind, at] of marks) {
        if (random() < 0.01) continue;
        const touch = {
          time: hundredths(Math.round(start + at)),
          swimmer,
          rep,
          kind,
          double: false,
        };
        touches.push(touch);
        if (random() < 0.01) {
          touches.push({
            ...touch,
            time: hundredths(touch.time + 5 + Math.round(45 * random())),
            double: true,
          });
        }
      }
    }
  });
  return { plan, touches: touches.sort((a, b) => a.time - b.time) };
}
