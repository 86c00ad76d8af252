// Grades a field on the device while the office cannot be reached, by the same rule as the office; held against it by a browser test.
const sureEnough = 0.9;
const fastEnough = 100;
const arrows = { mild: 1, moderate: 2, marked: 3 };

/** Standard normal distribution function; Abramowitz and Stegun 7.1.26, error below 2e-7. */
export function normal(z) {
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const tail = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429)))) * Math.exp(-x * x) / 2;
  return z < 0 ? tail : 1 - tail;
}

/** What a row is held against, from its attribute. */
export function bandOf(text) {
  const [low, high, step, setup, swing, own, letters] = text.split('|');
  const value = part => part === '' ? null : Number(part);
  return { low: value(low), high: value(high), step: value(step), setup: Number(setup), swing: Number(swing), own: Number(own), letters };
}

const round = value => Math.round(value * 1e9) / 1e9;

/** Grade and side of the mean of these swings; null when only the office can tell. */
export function gradeHere(band, values, { eye = false, frames = null, video = true } = {}) {
  if (values.length === 0 || (band.letters.includes('t') && frames !== null)) return null;
  const mean = values.reduce((sum, v) => sum + v * band.own, 0) / values.length;
  const factor = eye ? 2 : 1;
  const error = Math.hypot(band.setup * factor, band.swing * factor / Math.sqrt(values.length));
  if (band.low === null && band.high === null) return { grade: 'no-range', side: 'none', mean, error };
  const below = band.low === null ? 0 : round(band.low - mean);
  const above = band.high === null ? 0 : round(mean - band.high);
  if (below <= 0 && above <= 0) return { grade: 'in-range', side: 'none', mean, error };
  const outside = Math.max(below, above);
  const side = below > 0 ? 'low' : 'high';
  const chance = (band.low === null ? 0 : normal((band.low - mean) / error)) + (band.high === null ? 0 : normal((mean - band.high) / error));
  const slow = band.letters.includes('f') && (video || eye) && frames !== null && frames < fastEnough;
  const unsure = chance < sureEnough || slow || band.letters.includes('c') || (band.letters.includes('g') && outside <= 2 * error);
  if (unsure) return { grade: 'borderline', side, mean, error };
  const steps = round(outside / band.step);
  return { grade: steps <= 1 ? 'mild' : steps <= 2.5 ? 'moderate' : 'marked', side, mean, error };
}

/** The grade as a person reads it: sign and word, never colour alone. */
export function gradeMark({ grade, side }) {
  const mark = document.createElement('span');
  mark.className = `grade grade-${grade}`;
  const sign = document.createElement('span');
  sign.className = 'sign';
  sign.setAttribute('aria-hidden', 'true');
  sign.textContent = grade === 'in-range' ? '✓' : grade === 'borderline' ? '≈' : grade === 'no-range' ? '–' : (side === 'low' ? '↓' : '↑').repeat(arrows[grade]);
  mark.append(sign, grade === 'in-range' ? 'in range' : grade === 'no-range' ? 'no range' : `${grade}, ${side}`);
  return mark;
}
