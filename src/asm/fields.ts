/**
 * The field integrals between all pairs of elements at one frequency, in 128-bit SIMD.
 * The same method as solver/fill.ts; see there for the physics.
 *
 * Two lanes are two Gauss points of the source element. Tables are read in single precision, which is finer than their grid.
 */
import { countU, countV, hMin, kappaIm, kappaRe, perStepU, perStepV, scaleH, scaleRho, table } from './parts/ground-table';
import { cosine, cosSin, ln, madd, madd4, sine } from './parts/simd-math';

export { setTable } from './parts/ground-table';
export { mark, release, reserve } from './parts/memory';

// What the elements are; set by `setElements`. Eight numbers to an element: start, direction, length, half the squared radius.
let elements: usize = 0;
let count: i32 = 0;
let copyOf: usize = 0;
let directRow: usize = 0;
let imageRow: usize = 0;
let orders: usize = 0;
let statics: usize = 0;
let rules: usize = 0;
let ends: usize = 0;

export function setElements(
  elementsAt: usize,
  elementCount: i32,
  copyOfAt: usize,
  directAt: usize,
  imageAt: usize,
  ordersAt: usize,
  staticsAt: usize,
  rulesAt: usize,
  endsAt: usize,
): void {
  elements = elementsAt;
  count = elementCount;
  copyOf = copyOfAt;
  directRow = directAt;
  imageRow = imageAt;
  orders = ordersAt;
  statics = staticsAt;
  rules = rulesAt;
  ends = endsAt;
}

// Running sums of a pair: vector kernel by (shape of e) × (re, im), lanes the two points of f; in the end the four moments and the charge.
let m00Re: f64 = 0, m00Im: f64 = 0, m01Re: f64 = 0, m01Im: f64 = 0;
let m10Re: f64 = 0, m10Im: f64 = 0, m11Re: f64 = 0, m11Im: f64 = 0;
let chargeRe: f64 = 0, chargeIm: f64 = 0;

// @ts-ignore: decorator
@inline
function addPoints(weight: v128, s: f64, t: v128, aRe: v128, aIm: v128, cRe: v128, cIm: v128): void {
  const wRe = f64x2.mul(weight, aRe);
  const wIm = f64x2.mul(weight, aIm);
  const tRe = f64x2.mul(t, wRe);
  const tIm = f64x2.mul(t, wIm);
  const allRe = f64x2.extract_lane(wRe, 0) + f64x2.extract_lane(wRe, 1);
  const allIm = f64x2.extract_lane(wIm, 0) + f64x2.extract_lane(wIm, 1);
  const oneRe = f64x2.extract_lane(tRe, 0) + f64x2.extract_lane(tRe, 1);
  const oneIm = f64x2.extract_lane(tIm, 0) + f64x2.extract_lane(tIm, 1);
  const r = 1 - s;
  m00Re += r * (allRe - oneRe);
  m00Im += r * (allIm - oneIm);
  m01Re += r * oneRe;
  m01Im += r * oneIm;
  m10Re += s * (allRe - oneRe);
  m10Im += s * (allIm - oneIm);
  m11Re += s * oneRe;
  m11Im += s * oneIm;
  const kRe = f64x2.mul(weight, cRe);
  const kIm = f64x2.mul(weight, cIm);
  chargeRe += f64x2.extract_lane(kRe, 0) + f64x2.extract_lane(kRe, 1);
  chargeIm += f64x2.extract_lane(kIm, 0) + f64x2.extract_lane(kIm, 1);
}

function addStatic(row: i32, aRe: f64, aIm: f64, cRe: f64, cIm: f64): void {
  const at = statics + (<usize>row << 5);
  const s00 = load<f64>(at), s01 = load<f64>(at, 8), s10 = load<f64>(at, 16), s11 = load<f64>(at, 24);
  m00Re += aRe * s00;
  m00Im += aIm * s00;
  m01Re += aRe * s01;
  m01Im += aIm * s01;
  m10Re += aRe * s10;
  m10Im += aIm * s10;
  m11Re += aRe * s11;
  m11Im += aIm * s11;
  const whole = s00 + s01 + s10 + s11;
  chargeRe += cRe * whole;
  chargeIm += cIm * whole;
}

/** Rules of Gauss points for orders 2, 4, 6, 8, 10 stand one after another: points, then weights, ten numbers each. */
// @ts-ignore: decorator
@inline
function ruleOf(order: i32): usize {
  return rules + <usize>(order / 2 - 1) * 160;
}

/** Direct wave (turn = 1) or that of the mirrored element (turn = −1). */
function addWave(e: usize, f: usize, k0: f64, row: i32, turn: f64, a: f64, c: f64): void {
  const rule = ruleOf(2);
  const offSquared = f64x2.splat(load<f64>(e, 56) + load<f64>(f, 56));
  const le = load<f64>(e, 48), lf = load<f64>(f, 48);
  const t = v128.load(rule);
  const along = f64x2.mul(t, f64x2.splat(lf));
  const fx = madd(along, f64x2.splat(load<f64>(f, 24)), f64x2.splat(load<f64>(f)));
  const fy = madd(along, f64x2.splat(load<f64>(f, 32)), f64x2.splat(load<f64>(f, 8)));
  const fz = f64x2.mul(f64x2.splat(turn), madd(along, f64x2.splat(load<f64>(f, 40)), f64x2.splat(load<f64>(f, 16))));
  const weight = f64x2.splat(0.25 * le * lf);
  const less = f64x2.splat(row >= 0 ? 1 : 0);
  for (let i = 0; i < 2; i++) {
    const s = load<f64>(rule + (<usize>i << 3));
    const at = s * le;
    const dx = f64x2.sub(f64x2.splat(load<f64>(e) + at * load<f64>(e, 24)), fx);
    const dy = f64x2.sub(f64x2.splat(load<f64>(e, 8) + at * load<f64>(e, 32)), fy);
    const dz = f64x2.sub(f64x2.splat(load<f64>(e, 16) + at * load<f64>(e, 40)), fz);
    const r = f64x2.sqrt(madd(dx, dx, madd(dy, dy, madd(dz, dz, offSquared))));
    const inverse = f64x2.div(f64x2.splat(1), r);
    cosSin(f64x2.mul(f64x2.splat(k0), r));
    const re = f64x2.mul(f64x2.sub(cosine, less), inverse);
    const im = f64x2.neg(f64x2.mul(sine, inverse));
    const av = f64x2.splat(a);
    const cv = f64x2.splat(c);
    addPoints(weight, s, t, f64x2.mul(av, re), f64x2.mul(av, im), f64x2.mul(cv, re), f64x2.mul(cv, im));
  }
  if (row >= 0) addStatic(row, a, 0, c, 0);
}

let lowKernels: v128 = f32x4.splat(0); // Gxx, K_Φ
let highKernels: v128 = f32x4.splat(0); // Gzz, ∂Q/∂ρ

/** The four kernels' T at grid place (u, v), by cubic interpolation. */
// @ts-ignore: decorator
@inline
function readTable(u: f64, v: f64): void {
  const iu = min(max(<i32>Math.floor(u), 1), countU - 3);
  const iv = min(max(<i32>Math.floor(v), 1), countV - 3);
  const a = <f32>(u - <f64>iu);
  const b = <f32>(v - <f64>iv);
  const v0 = f32x4.splat((-b * (b - 1) * (b - 2)) / 6);
  const v1 = f32x4.splat(((b * b - 1) * (b - 2)) / 2);
  const v2 = f32x4.splat((-b * (b + 1) * (b - 2)) / 2);
  const v3 = f32x4.splat((b * (b * b - 1)) / 6);
  const row = <usize>countV << 5;
  let at = table + <usize>(iu - 1) * row + (<usize>(iv - 1) << 5);
  let low = f32x4.splat(0);
  let high = f32x4.splat(0);
  for (let i = 0; i < 4; i++) {
    const weight: f32 =
      i == 0 ? (-a * (a - 1) * (a - 2)) / 6 : i == 1 ? ((a * a - 1) * (a - 2)) / 2 : i == 2 ? (-a * (a + 1) * (a - 2)) / 2 : (a * (a * a - 1)) / 6;
    const w = f32x4.splat(weight);
    let x = f32x4.mul(v0, v128.load(at));
    let y = f32x4.mul(v0, v128.load(at, 16));
    x = madd4(v1, v128.load(at, 32), x);
    y = madd4(v1, v128.load(at, 48), y);
    x = madd4(v2, v128.load(at, 64), x);
    y = madd4(v2, v128.load(at, 80), y);
    x = madd4(v3, v128.load(at, 96), x);
    y = madd4(v3, v128.load(at, 112), y);
    low = madd4(w, x, low);
    high = madd4(w, y, high);
    at += row;
  }
  lowKernels = low;
  highKernels = high;
}

function addSoil(e: usize, f: usize, k0: f64, row: i32, order: i32): void {
  const rule = ruleOf(order);
  const le = load<f64>(e, 48), lf = load<f64>(f, 48);
  const uex = load<f64>(e, 24), uey = load<f64>(e, 32), uez = load<f64>(e, 40);
  const ufx = load<f64>(f, 24), ufy = load<f64>(f, 32), ufz = load<f64>(f, 40);
  const across = uex * ufx + uey * ufy;
  const up = uez * ufz;
  const offSquared = f64x2.splat(load<f64>(e, 56) + load<f64>(f, 56));
  const imageRe = row >= 0 ? kappaRe : 0;
  const imageIm = row >= 0 ? kappaIm : 0;
  const scale = k0 * (1 / hMin);
  for (let j = 0; j < order; j += 2) {
    const tj = v128.load(rule + (<usize>j << 3));
    const wj = v128.load(rule + 80 + (<usize>j << 3));
    const along = f64x2.mul(tj, f64x2.splat(lf));
    const fx = madd(along, f64x2.splat(ufx), f64x2.splat(load<f64>(f)));
    const fy = madd(along, f64x2.splat(ufy), f64x2.splat(load<f64>(f, 8)));
    const fz = madd(along, f64x2.splat(ufz), f64x2.splat(load<f64>(f, 16)));
    for (let i = 0; i < order; i++) {
      const s = load<f64>(rule + (<usize>i << 3));
      const at = s * le;
      const dx = f64x2.sub(f64x2.splat(load<f64>(e) + at * uex), fx);
      const dy = f64x2.sub(f64x2.splat(load<f64>(e, 8) + at * uey), fy);
      const h = f64x2.add(f64x2.splat(load<f64>(e, 16) + at * uez), fz);
      const rhoSquared = madd(dx, dx, f64x2.mul(dy, dy));
      const rho = f64x2.sqrt(rhoSquared);
      const r = f64x2.sqrt(f64x2.add(f64x2.add(rhoSquared, f64x2.mul(h, h)), offSquared));
      const inverse = f64x2.div(f64x2.splat(1), r);
      cosSin(f64x2.mul(f64x2.splat(k0), r));
      const waveRe = f64x2.mul(cosine, inverse);
      const waveIm = f64x2.neg(f64x2.mul(sine, inverse));
      // asinh x = ln(x + √(x² + 1)).
      const x = f64x2.mul(rho, f64x2.splat(scale));
      const arc = ln(f64x2.add(x, f64x2.sqrt(madd(x, x, f64x2.splat(1)))));
      const u = f64x2.mul(madd(rho, f64x2.splat(k0 * scaleRho), arc), f64x2.splat(perStepU));
      const y = f64x2.mul(h, f64x2.splat(scale));
      const level = madd(f64x2.splat(scaleH), f64x2.sub(f64x2.mul(h, f64x2.splat(k0)), f64x2.splat(hMin)), ln(y));
      const v = f64x2.mul(level, f64x2.splat(perStepV));
      // u·ρ̂ of both elements; at ρ = 0 there is no direction and the term is zero.
      const safeRho = f64x2.max(rho, f64x2.splat(1e-12));
      const towardF = f64x2.div(madd(f64x2.splat(ufx), dx, f64x2.mul(f64x2.splat(ufy), dy)), safeRho);
      const towardE = f64x2.div(madd(f64x2.splat(uex), dx, f64x2.mul(f64x2.splat(uey), dy)), safeRho);
      const turn = f64x2.sub(f64x2.mul(f64x2.splat(uez), towardF), f64x2.mul(f64x2.splat(ufz), towardE));
      readTable(f64x2.extract_lane(u, 0), f64x2.extract_lane(v, 0));
      const low0 = lowKernels, high0 = highKernels;
      readTable(f64x2.extract_lane(u, 1), f64x2.extract_lane(v, 1));
      // From (kernel, point) order to one vector for each part, lanes the two points.
      const g = v128.shuffle<f32>(low0, lowKernels, 0, 4, 1, 5);
      const k = v128.shuffle<f32>(low0, lowKernels, 2, 6, 3, 7);
      const z = v128.shuffle<f32>(high0, highKernels, 0, 4, 1, 5);
      const q = v128.shuffle<f32>(high0, highKernels, 2, 6, 3, 7);
      const tRe = madd(f64x2.splat(across), f64x2.promote_low_f32x4(g), madd(f64x2.splat(up), f64x2.promote_low_f32x4(z), f64x2.mul(turn, f64x2.promote_low_f32x4(q))));
      const tIm = madd(f64x2.splat(across), f64x2.promote_low_f32x4(upper(g)), madd(f64x2.splat(up), f64x2.promote_low_f32x4(upper(z)), f64x2.mul(turn, f64x2.promote_low_f32x4(upper(q)))));
      const pRe = f64x2.promote_low_f32x4(k);
      const pIm = f64x2.promote_low_f32x4(upper(k));
      const lessA = f64x2.mul(f64x2.splat(2 * up), inverse);
      const aRe = f64x2.sub(f64x2.sub(f64x2.mul(tRe, waveRe), f64x2.mul(tIm, waveIm)), f64x2.mul(lessA, f64x2.splat(imageRe)));
      const aIm = f64x2.sub(madd(tRe, waveIm, f64x2.mul(tIm, waveRe)), f64x2.mul(lessA, f64x2.splat(imageIm)));
      const cRe = madd(f64x2.splat(imageRe), inverse, f64x2.sub(f64x2.mul(pRe, waveRe), f64x2.mul(pIm, waveIm)));
      const cIm = madd(f64x2.splat(imageIm), inverse, madd(pRe, waveIm, f64x2.mul(pIm, waveRe)));
      const weight = f64x2.mul(wj, f64x2.splat(le * lf * load<f64>(rule + 80 + (<usize>i << 3))));
      addPoints(weight, s, tj, aRe, aIm, cRe, cIm);
    }
  }
  if (row >= 0) addStatic(row, 2 * up * kappaRe, 2 * up * kappaIm, -kappaRe, -kappaIm);
}

// @ts-ignore: decorator
@inline
function upper(a: v128): v128 {
  return v128.shuffle<f32>(a, a, 2, 3, 2, 3);
}

/** ground: 0 none, 1 perfect conductor, 2 soil. `factor` is η0/4π. */
export function fillPairs(k0: f64, ground: i32, factor: f64): void {
  let pair: usize = 0;
  for (let i = 0; i < count; i++) {
    const e = elements + (<usize>i << 6);
    for (let j = 0; j <= i; j++, pair++) {
      const earlier = load<i32>(copyOf + (pair << 2));
      if (earlier >= 0) {
        memory.copy(ends + (pair << 6), ends + (<usize>earlier << 6), 64);
        continue;
      }
      const f = elements + (<usize>j << 6);
      m00Re = m00Im = m01Re = m01Im = m10Re = m10Im = m11Re = m11Im = chargeRe = chargeIm = 0;
      const across = load<f64>(e, 24) * load<f64>(f, 24) + load<f64>(e, 32) * load<f64>(f, 32);
      const up = load<f64>(e, 40) * load<f64>(f, 40);
      addWave(e, f, k0, load<i32>(directRow + (pair << 2)), 1, across + up, 1);
      const image = load<i32>(imageRow + (pair << 2));
      if (ground == 1) addWave(e, f, k0, image, -1, up - across, -1);
      else if (ground == 2) addSoil(e, f, k0, image, <i32>load<u8>(orders + pair));
      const out = ends + (pair << 6);
      const charge = 1 / (k0 * load<f64>(e, 48) * load<f64>(f, 48));
      const cRe = charge * chargeRe, cIm = charge * chargeIm;
      store<f64>(out, -factor * (k0 * m00Im - cIm));
      store<f64>(out, factor * (k0 * m00Re - cRe), 8);
      store<f64>(out, -factor * (k0 * m01Im + cIm), 16);
      store<f64>(out, factor * (k0 * m01Re + cRe), 24);
      store<f64>(out, -factor * (k0 * m10Im + cIm), 32);
      store<f64>(out, factor * (k0 * m10Re + cRe), 40);
      store<f64>(out, -factor * (k0 * m11Im - cIm), 48);
      store<f64>(out, factor * (k0 * m11Re - cRe), 56);
    }
  }
}

/** Adds the impedances of all pairs into the packed matrix of the unknowns; see solver/assemble.ts. */
export function assemble(offset: usize, unknown: usize, sign: usize, re: usize, im: usize): void {
  let out = ends;
  for (let e = 0; e < count; e++) {
    for (let f = 0; f <= e; f++) {
      for (let i = 0; i < 2; i++) {
        const m0 = load<i32>(offset + (<usize>(2 * e + i) << 2));
        const m1 = load<i32>(offset + (<usize>(2 * e + i + 1) << 2));
        for (let j = 0; j < 2; j++, out += 16) {
          const n0 = load<i32>(offset + (<usize>(2 * f + j) << 2));
          const n1 = load<i32>(offset + (<usize>(2 * f + j + 1) << 2));
          for (let m = m0; m < m1; m++) {
            const row = load<i32>(unknown + (<usize>m << 2));
            for (let n = n0; n < n1; n++) {
              const column = load<i32>(unknown + (<usize>n << 2));
              if (e == f && column > row) continue;
              let factor = load<f64>(sign + (<usize>m << 3)) * load<f64>(sign + (<usize>n << 3));
              if (row == column && e != f) factor *= 2;
              const high = max(row, column);
              const slot = <usize>(high * (high + 1) / 2 + min(row, column)) << 3;
              store<f64>(re + slot, load<f64>(re + slot) + factor * load<f64>(out));
              store<f64>(im + slot, load<f64>(im + slot) + factor * load<f64>(out, 8));
            }
          }
        }
      }
    }
  }
}
