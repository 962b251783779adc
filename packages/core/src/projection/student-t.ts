/**
 * The value that Student's t stays below with a given probability.
 *
 * The share between −t and t has a closed form in θ, t = √df·tan θ, for whole degrees of freedom
 * (Abramowitz and Stegun 1964, section 26.7, from memory). It grows with θ, so halving finds the θ wanted.
 */
export function studentT(probability: number, df: number): number {
  const within = Math.abs(2 * probability - 1);
  let [low, high] = [0, Math.PI / 2];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (shareWithin(middle, df) < within) low = middle;
    else high = middle;
  }
  return Math.sign(probability - 0.5) * Math.sqrt(df) * Math.tan(low);
}

function shareWithin(theta: number, df: number): number {
  const cos = Math.cos(theta);
  const odd = df % 2;
  let term = odd === 1 ? cos : 1;
  let sum = 0;
  for (let power = odd; power <= df - 2; power += 2) {
    sum += term;
    term *= (cos * cos * (power + 1)) / (power + 2);
  }
  const rest = Math.sin(theta) * sum;
  return odd === 1 ? (2 / Math.PI) * (theta + rest) : rest;
}
