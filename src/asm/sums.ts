/**
 * The long sums beside the field integrals, in 128-bit SIMD: ground tables, interpolation over frequency, radiation, near
 * fields. The same sums as the plain ones in solver/ground-table.ts, solver/matrix-interpolation.ts, solver/far-field.ts and
 * solver/near-waves.ts.
 */
import { cosine, cosSin, exp, madd, sine } from './parts/simd-math';

export { setTable } from './parts/ground-table';
export { mark, release, reserve } from './parts/memory';
export { directWaves, reflectedWaves } from './parts/near-waves';

/**
 * One band of a ground table; see solver/ground-table.ts. `out` holds a row of 8·heights numbers for each ρ and is added to. `rows` and
 * `heights` count ρ and h (heights a multiple of 2); j0, j1 and m are room for rows·nodes, rows·nodes and nodes·8·heights numbers.
 */
export function tableBand(
  out: usize,
  rho: usize,
  rows: i32,
  h: usize,
  heights: i32,
  at: usize,
  k: usize,
  weight: usize,
  spectrum: usize,
  nodes: i32,
  propagating: i32,
  j0: usize,
  j1: usize,
  m: usize,
): void {
  let to = m;
  for (let n = 0; n < nodes; n++) {
    const o = <usize>n << 3;
    heightRow(to, spectrum + (o << 3), load<f64>(at + o), load<f64>(weight + o), h, heights, n < propagating);
    to += <usize>heights << 6;
    for (let r = 0; r < rows; r++) {
      const place = (<usize>r * <usize>nodes + <usize>n) << 3;
      bessel(j0 + place, j1 + place, load<f64>(k + o) * load<f64>(rho + (<usize>r << 3)));
    }
  }
  product(out, j0, j1, m, rows, nodes, heights * 8);
}

/** weight · spectrum · e^(−u0 h) for every height. */
function heightRow(to: usize, spectrum: usize, at: f64, weight: f64, h: usize, heights: i32, turns: bool): void {
  const w = f64x2.splat(weight);
  for (let j = 0; j < heights; j += 2, to += 128) {
    const x = f64x2.mul(f64x2.splat(at), v128.load(h + (<usize>j << 3)));
    let re: v128;
    let im: v128;
    if (turns) {
      cosSin(x);
      re = f64x2.neg(f64x2.mul(w, sine));
      im = f64x2.neg(f64x2.mul(w, cosine));
    } else {
      re = f64x2.mul(w, exp(f64x2.max(f64x2.neg(x), f64x2.splat(-700))));
      im = f64x2.splat(0);
    }
    const re0 = v128.shuffle<f64>(re, re, 0, 0), re1 = v128.shuffle<f64>(re, re, 1, 1);
    const im0 = v128.shuffle<f64>(im, im, 0, 0), im1 = v128.shuffle<f64>(im, im, 1, 1);
    for (let q: usize = 0; q < 64; q += 16) {
      const s = v128.load(spectrum + q);
      const turned = f64x2.mul(v128.shuffle<f64>(s, s, 1, 0), minusPlus());
      v128.store(to + q, madd(re0, s, f64x2.mul(im0, turned)));
      v128.store(to + q, madd(re1, s, f64x2.mul(im1, turned)), 64);
    }
  }
}

// @ts-ignore: decorator
@inline
function minusPlus(): v128 {
  return f64x2(-1, 1);
}

// @ts-ignore: decorator
@inline
function polynomial(x: f64, a: f64, b: f64, c: f64, d: f64, e: f64, f: f64, g: f64): f64 {
  return (((((a * x + b) * x + c) * x + d) * x + e) * x + f) * x + g;
}

/** J0(x) and J1(x)/x; the polynomials of solver/bessel.ts, two cosines at once. */
function bessel(to0: usize, to1: usize, x: f64): void {
  if (x <= 3) {
    const z = (x * x) / 9;
    store<f64>(to0, polynomial(z, 2.1e-4, -0.0039444, 0.0444479, -0.3163866, 1.2656208, -2.2499997, 1));
    store<f64>(to1, polynomial(z, 1.109e-5, -3.1761e-4, 0.00443319, -0.03954289, 0.21093573, -0.56249985, 0.5));
    return;
  }
  const y = 3 / x;
  const turn0 = polynomial(y, 1.3558e-4, -2.9333e-4, -5.4125e-4, 0.00262573, -3.954e-5, -0.04166397, -0.78539816);
  const turn1 = polynomial(y, -2.9166e-4, 7.9824e-4, 7.4348e-4, -0.00637879, 5.65e-5, 0.12499612, -2.35619449);
  const size0 = polynomial(y, 1.4476e-4, -7.2805e-4, 0.00137237, -9.512e-5, -0.0055274, -7.7e-7, 0.79788456);
  const size1 = polynomial(y, -2.0033e-4, 0.00113653, -0.00249511, 1.7105e-4, 0.01659667, 1.56e-6, 0.79788456);
  cosSin(f64x2.add(f64x2.splat(x), f64x2(turn0, turn1)));
  const scale = 1 / Math.sqrt(x);
  store<f64>(to0, size0 * f64x2.extract_lane(cosine, 0) * scale);
  store<f64>(to1, (size1 * f64x2.extract_lane(cosine, 1) * scale) / x);
}

/** out[r][c] += Σ_n j(r, n)·m[n][c]: of eight columns the first six with j0, the last two with j1. `width` is a multiple of 8. */
function product(out: usize, j0: usize, j1: usize, m: usize, rows: i32, nodes: i32, width: i32): void {
  const line = <usize>width << 3;
  for (let r = 0; r < rows; r++) {
    const a = j0 + (<usize>r * <usize>nodes << 3);
    const b = j1 + (<usize>r * <usize>nodes << 3);
    for (let c = 0; c < width; c += 8) {
      const oc = <usize>c << 3;
      const to = out + <usize>r * line + oc;
      let x0 = v128.load(to), x1 = v128.load(to, 16), x2 = v128.load(to, 32), x3 = v128.load(to, 48);
      let from = m + oc;
      for (let n = 0; n < nodes; n++, from += line) {
        const p = v128.load64_splat(a + (<usize>n << 3));
        const q = v128.load64_splat(b + (<usize>n << 3));
        x0 = madd(p, v128.load(from), x0);
        x1 = madd(p, v128.load(from, 16), x1);
        x2 = madd(p, v128.load(from, 32), x2);
        x3 = madd(q, v128.load(from, 48), x3);
      }
      v128.store(to, x0);
      v128.store(to, x1, 16);
      v128.store(to, x2, 32);
      v128.store(to, x3, 48);
    }
  }
}

/** out = factor·e^(−jkd) Σ share·node over `length` numbers, a multiple of 2; see solver/matrix-interpolation.ts. */
export function combine(
  outRe: usize,
  outIm: usize,
  re: usize,
  im: usize,
  distance: usize,
  shares: usize,
  nodes: i32,
  length: i32,
  k0: f64,
  factor: f64,
): void {
  const line = <usize>length << 3;
  const turn: f64 = k0 < 0 ? -factor : factor;
  for (let n = 0; n < length; n += 2) {
    const o = <usize>n << 3;
    let sumRe = f64x2.splat(0);
    let sumIm = f64x2.splat(0);
    let from = o;
    for (let i = 0; i < nodes; i++, from += line) {
      const share = v128.load64_splat(shares + (<usize>i << 3));
      sumRe = madd(share, v128.load(re + from), sumRe);
      sumIm = madd(share, v128.load(im + from), sumIm);
    }
    cosSin(f64x2.mul(f64x2.splat(Math.abs(k0)), v128.load(distance + o)));
    const c = f64x2.mul(f64x2.splat(factor), cosine);
    const s = f64x2.mul(f64x2.splat(-turn), sine);
    v128.store(outRe + o, f64x2.sub(f64x2.mul(sumRe, c), f64x2.mul(sumIm, s)));
    v128.store(outIm + o, madd(sumRe, s, f64x2.mul(sumIm, c)));
  }
}

/**
 * Radiation intensity in one zenith angle for each azimuth, without its constant factor; see solver/far-field.ts. `at` holds nine rows of
 * `points` numbers (a multiple of 2): x, y, z, real and imaginary moments by axis; `scratch` six more. Reflection: re and im of Γv, Γh.
 */
export function intensities(
  out: usize,
  at: usize,
  scratch: usize,
  points: i32,
  k0: f64,
  cosTheta: f64,
  sinTheta: f64,
  vRe: f64,
  vIm: f64,
  hRe: f64,
  hIm: f64,
  directions: usize,
  azimuths: i32,
): void {
  const row = <usize>points << 3;
  const kc = f64x2.splat(k0 * cosTheta);
  for (let n: usize = 0; n < row; n += 16) {
    // cosSin wants a phase ≥ 0: the sine's sign is put back.
    const phase = f64x2.mul(kc, v128.load(at + 2 * row + n));
    cosSin(f64x2.abs(phase));
    const c = cosine;
    const s = v128.xor(sine, v128.and(phase, i64x2.splat(0x8000000000000000)));
    const downRe = madd(f64x2.splat(vRe), c, f64x2.mul(f64x2.splat(vIm), s));
    const downIm = f64x2.sub(f64x2.mul(f64x2.splat(vIm), c), f64x2.mul(f64x2.splat(vRe), s));
    v128.store(scratch + n, f64x2.mul(f64x2.splat(cosTheta), f64x2.sub(c, downRe)));
    v128.store(scratch + row + n, f64x2.mul(f64x2.splat(cosTheta), f64x2.sub(s, downIm)));
    v128.store(scratch + 2 * row + n, f64x2.mul(f64x2.splat(-sinTheta), f64x2.add(c, downRe)));
    v128.store(scratch + 3 * row + n, f64x2.mul(f64x2.splat(-sinTheta), f64x2.add(s, downIm)));
    v128.store(scratch + 4 * row + n, madd(f64x2.splat(hIm), s, madd(f64x2.splat(hRe), c, c)));
    v128.store(scratch + 5 * row + n, f64x2.sub(madd(f64x2.splat(hIm), c, s), f64x2.mul(f64x2.splat(hRe), s)));
  }
  for (let p = 0; p < azimuths; p++) {
    const cx = v128.load64_splat(directions + (<usize>p << 4));
    const cy = v128.load64_splat(directions + (<usize>p << 4), 8);
    const kx = f64x2.mul(f64x2.splat(k0 * sinTheta), cx);
    const ky = f64x2.mul(f64x2.splat(k0 * sinTheta), cy);
    let tRe = f64x2.splat(0), tIm = f64x2.splat(0), pRe = f64x2.splat(0), pIm = f64x2.splat(0);
    for (let n: usize = 0; n < row; n += 16) {
      const from = at + n;
      const phase = madd(kx, v128.load(from), f64x2.mul(ky, v128.load(from + row)));
      cosSin(f64x2.abs(phase));
      const c = cosine;
      const s = v128.xor(sine, v128.and(phase, i64x2.splat(0x8000000000000000)));
      const mx = v128.load(from + 3 * row), my = v128.load(from + 4 * row), mz = v128.load(from + 5 * row);
      const nx = v128.load(from + 6 * row), ny = v128.load(from + 7 * row), nz = v128.load(from + 8 * row);
      const alongRe = madd(mx, cx, f64x2.mul(my, cy)), alongIm = madd(nx, cx, f64x2.mul(ny, cy));
      const acrossRe = f64x2.sub(f64x2.mul(my, cx), f64x2.mul(mx, cy)), acrossIm = f64x2.sub(f64x2.mul(ny, cx), f64x2.mul(nx, cy));
      const w = scratch + n;
      const lRe = v128.load(w), lIm = v128.load(w + row), uRe = v128.load(w + 2 * row), uIm = v128.load(w + 3 * row);
      const hr = v128.load(w + 4 * row), hi = v128.load(w + 5 * row);
      let re = f64x2.sub(madd(mz, uRe, f64x2.mul(alongRe, lRe)), madd(nz, uIm, f64x2.mul(alongIm, lIm)));
      let im = f64x2.add(madd(mz, uIm, f64x2.mul(alongRe, lIm)), madd(nz, uRe, f64x2.mul(alongIm, lRe)));
      tRe = f64x2.add(tRe, f64x2.sub(f64x2.mul(re, c), f64x2.mul(im, s)));
      tIm = f64x2.add(tIm, madd(re, s, f64x2.mul(im, c)));
      re = f64x2.sub(f64x2.mul(acrossRe, hr), f64x2.mul(acrossIm, hi));
      im = madd(acrossRe, hi, f64x2.mul(acrossIm, hr));
      pRe = f64x2.add(pRe, f64x2.sub(f64x2.mul(re, c), f64x2.mul(im, s)));
      pIm = f64x2.add(pIm, madd(re, s, f64x2.mul(im, c)));
    }
    const a = f64x2.extract_lane(tRe, 0) + f64x2.extract_lane(tRe, 1);
    const b = f64x2.extract_lane(tIm, 0) + f64x2.extract_lane(tIm, 1);
    const d = f64x2.extract_lane(pRe, 0) + f64x2.extract_lane(pRe, 1);
    const f = f64x2.extract_lane(pIm, 0) + f64x2.extract_lane(pIm, 1);
    store<f64>(out + (<usize>p << 3), a * a + b * b + d * d + f * f);
  }
}
