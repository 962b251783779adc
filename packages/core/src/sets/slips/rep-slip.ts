import { about, exactly } from '../../splits/slips/finding.js';
import { type Lap, ratioOf } from '../../splits/slips/lap-list.js';
import { isImpossible } from '../../splits/slips/lone-lap.js';
import { greatestOf, leastOf, sumOf } from '../../statistics.js';
import { endElsewhere, lapMends, unmarked } from './mark-mends.js';
import { lapTook, type RepSlip, repMends } from './rep-mends.js';
import { shareOf, type UsualRep } from './usual-rep.js';

// Choices of ours, as ratios less one or as shares.
const OFF = 0.1; // a lap this far from the usual is looked into
const SHARE = 0.022; // and two laps whose touch divides them otherwise than usual by this much
const CHANCE = 5; // times the scatter of the other reps, where that is more
const FITS = 0.08; // how near the usual laps a mended rep must come
const TIE = 0.01; // of mends that come alike near, the likelier is meant
const ODD = 0.5; // a lap this far off is told even where nothing explains it
const LONGEST = 100; // laps of a rep: each way to mend its marks is tried against all of them
const MOST = 6; // suspected laps; more than that is another swim, not a slip

/** What is wrong in a rep whose marks are the usual ones; or null. */
export function slipOfRep(laps: readonly Lap[], usual: UsualRep): RepSlip | null {
  const suspects = suspectsIn(laps, usual);
  if (suspects.length === 0 || suspects.length > MOST) return impossible(laps);
  const known = bestOf(repMends(laps, suspects, usual), usual);
  return known ?? impossible(laps) ?? unexplained(laps, suspects, usual);
}

/** What is wrong in a rep whose marks are not the usual ones; or null, as where it only has more. */
export function slipOfMarks(laps: readonly Lap[], usual: UsualRep): RepSlip | null {
  if (usual.laps.length > LONGEST) return null;
  const elsewhere = endElsewhere(laps, usual);
  if (elsewhere === null) return unmarked(laps, usual);
  return bestOf(lapMends(laps, usual), usual) ?? elsewhere;
}

/** The laps that are off by themselves, or by the touch at either end of them. */
function suspectsIn(laps: readonly Lap[], usual: UsualRep): readonly number[] {
  const touches = usual.shares.map((share, k) => {
    const least = Math.max(SHARE, CHANCE * (usual.shareScatter[k] as number));
    return Math.abs(shareOf(laps, k) - share) > least;
  });
  return laps.flatMap((_, k) => {
    const isOff = offOf(laps, k, usual) > Math.max(OFF, CHANCE * (usual.scatter[k] as number));
    return isOff || touches[k] === true || touches[k - 1] === true ? [k] : [];
  });
}

/** The mend that brings the rep nearest to the usual, if one comes near. */
function bestOf(mends: readonly RepSlip[], usual: UsualRep): RepSlip | null {
  if (mends.length === 0) return null;
  const off = mends.map(({ mend }) => {
    const laps = mend ?? [];
    return greatestOf(laps.map((_, k) => offOf(laps, k, usual)));
  });
  const enough = Math.min(FITS, leastOf(off) + TIE);
  return mends.find((_, i) => (off[i] as number) <= enough) ?? null;
}

function impossible(laps: readonly Lap[]): RepSlip | null {
  const lap = laps.findIndex(isImpossible);
  if (lap < 0) return null;
  const { time, distance } = laps[lap] as Lap;
  const why = `lap ${lap + 1} took ${exactly(time)} over ${Math.round(distance)}, faster than anyone swims.`;
  return { kind: 'impossible', lap, why, mend: null };
}

function unexplained(
  laps: readonly Lap[],
  suspects: readonly number[],
  usual: UsualRep,
): RepSlip | null {
  const [time, wanted] = [timeOf(laps), timeOf(usual.laps)];
  if (Math.abs(time / wanted - 2) < 2 * FITS) {
    const why = `all laps together took ${exactly(time)} where ${about(wanted)} is usual: the finish was probably missed, or two reps stand in one.`;
    return { kind: 'missed-touch', lap: laps.length - 1, why, mend: null };
  }
  const lap = suspects.find((k) => offOf(laps, k, usual) > ODD);
  if (lap === undefined) return null;
  const why = `${lapTook(laps, lap, usual)}, and no common slip explains it.`;
  return { kind: 'odd-lap', lap, why, mend: null };
}

/** How far a lap is from the usual, as a ratio less one. */
const offOf = (laps: readonly Lap[], k: number, usual: UsualRep): number =>
  ratioOf((laps[k] as Lap).time, (usual.laps[k] as Lap).time) - 1;

const timeOf = (laps: readonly Lap[]): number => sumOf(laps.map(({ time }) => time));
