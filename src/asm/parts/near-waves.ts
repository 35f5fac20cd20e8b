/**
 * Sums of the waves of short sources at one point, in 128-bit SIMD; the same as the plain ones of solver/near-waves.ts, see there for the physics
 * and for how sources stand in a list. Direct waves: two lanes are two sources. By way of the soil: lanes are re and im, and tables are
 * read in single precision, which is finer than their grid.
 */
import { countU, countV, hMin, perStepU, perStepV, scaleH, scaleRho, table } from './ground-table';
import { cosine, cosSin, ln, madd, madd4, sine } from './simd-math';

// @ts-ignore: decorator
@inline
function addLanes(at: usize, lanes: v128): void {
  store<f64>(at, load<f64>(at) + f64x2.extract_lane(lanes, 0) + f64x2.extract_lane(lanes, 1));
}

/** Adds to the eighteen sums at `out`: A, its curl, the gradient of Φ, each x, y, z of re then of im. */
export function directWaves(out: usize, list: usize, pairs: i32, px: f64, py: f64, pz: f64, k0: f64): void {
  const zero = f64x2.splat(0);
  let aXRe = zero, aYRe = zero, aZRe = zero, aXIm = zero, aYIm = zero, aZIm = zero;
  let cXRe = zero, cYRe = zero, cZRe = zero, cXIm = zero, cYIm = zero, cZIm = zero;
  let gXRe = zero, gYRe = zero, gZRe = zero, gXIm = zero, gYIm = zero, gZIm = zero;
  for (let pair = 0, at = list; pair < pairs; pair++, at += 160) {
    const x = f64x2.sub(f64x2.splat(px), v128.load(at));
    const y = f64x2.sub(f64x2.splat(py), v128.load(at, 16));
    const z = f64x2.sub(f64x2.splat(pz), v128.load(at, 32));
    const ux = v128.load(at, 48), uy = v128.load(at, 64), uz = v128.load(at, 80);
    const iRe = v128.load(at, 96), iIm = v128.load(at, 112);
    const qRe = v128.load(at, 128), qIm = v128.load(at, 144);
    const distance = f64x2.sqrt(madd(x, x, madd(y, y, f64x2.mul(z, z))));
    const inverse = f64x2.div(f64x2.splat(1), distance);
    const phase = f64x2.mul(f64x2.splat(k0), distance);
    cosSin(phase);
    const gRe = f64x2.mul(cosine, inverse);
    const gIm = f64x2.neg(f64x2.mul(sine, inverse));
    const fall = f64x2.neg(f64x2.mul(inverse, inverse));
    const slopeRe = f64x2.mul(fall, f64x2.sub(gRe, f64x2.mul(phase, gIm))); // ∇G = slope · r
    const slopeIm = f64x2.mul(fall, madd(phase, gRe, gIm));
    const waveRe = f64x2.sub(f64x2.mul(iRe, gRe), f64x2.mul(iIm, gIm));
    const waveIm = madd(iRe, gIm, f64x2.mul(iIm, gRe));
    const currentRe = f64x2.sub(f64x2.mul(iRe, slopeRe), f64x2.mul(iIm, slopeIm));
    const currentIm = madd(iRe, slopeIm, f64x2.mul(iIm, slopeRe));
    const chargeRe = f64x2.sub(f64x2.mul(qRe, slopeRe), f64x2.mul(qIm, slopeIm));
    const chargeIm = madd(qRe, slopeIm, f64x2.mul(qIm, slopeRe));
    const turnX = f64x2.sub(f64x2.mul(y, uz), f64x2.mul(z, uy));
    const turnY = f64x2.sub(f64x2.mul(z, ux), f64x2.mul(x, uz));
    const turnZ = f64x2.sub(f64x2.mul(x, uy), f64x2.mul(y, ux));
    aXRe = madd(ux, waveRe, aXRe);
    aYRe = madd(uy, waveRe, aYRe);
    aZRe = madd(uz, waveRe, aZRe);
    aXIm = madd(ux, waveIm, aXIm);
    aYIm = madd(uy, waveIm, aYIm);
    aZIm = madd(uz, waveIm, aZIm);
    cXRe = madd(turnX, currentRe, cXRe);
    cYRe = madd(turnY, currentRe, cYRe);
    cZRe = madd(turnZ, currentRe, cZRe);
    cXIm = madd(turnX, currentIm, cXIm);
    cYIm = madd(turnY, currentIm, cYIm);
    cZIm = madd(turnZ, currentIm, cZIm);
    gXRe = madd(x, chargeRe, gXRe);
    gYRe = madd(y, chargeRe, gYRe);
    gZRe = madd(z, chargeRe, gZRe);
    gXIm = madd(x, chargeIm, gXIm);
    gYIm = madd(y, chargeIm, gYIm);
    gZIm = madd(z, chargeIm, gZIm);
  }
  addLanes(out, aXRe);
  addLanes(out + 8, aYRe);
  addLanes(out + 16, aZRe);
  addLanes(out + 24, aXIm);
  addLanes(out + 32, aYIm);
  addLanes(out + 40, aZIm);
  addLanes(out + 48, cXRe);
  addLanes(out + 56, cYRe);
  addLanes(out + 64, cZRe);
  addLanes(out + 72, cXIm);
  addLanes(out + 80, cYIm);
  addLanes(out + 88, cZIm);
  addLanes(out + 96, gXRe);
  addLanes(out + 104, gYRe);
  addLanes(out + 112, gZRe);
  addLanes(out + 120, gXIm);
  addLanes(out + 128, gYIm);
  addLanes(out + 136, gZIm);
}

/** T of the four kernels, then its slopes along u, then along v. */
const read: usize = memory.data(192, 16);

// Sums over the rows of the table met so far, four numbers of the two lower kernels and four of the two higher ones.
let low: v128 = f32x4.splat(0), lowByU: v128 = f32x4.splat(0), lowByV: v128 = f32x4.splat(0);
let high: v128 = f32x4.splat(0), highByU: v128 = f32x4.splat(0), highByV: v128 = f32x4.splat(0);

/** One row, from its weights along v (and their slopes) and its own weight along u (and that one's slope). */
// @ts-ignore: decorator
@inline
function addRow(at: usize, v0: v128, v1: v128, v2: v128, v3: v128, s0: v128, s1: v128, s2: v128, s3: v128, weight: f32, slope: f32): void {
  const w = f32x4.splat(weight), t = f32x4.splat(slope);
  const a = v128.load(at), b = v128.load(at, 32), c = v128.load(at, 64), d = v128.load(at, 96);
  const here = madd4(v3, d, madd4(v2, c, madd4(v1, b, f32x4.mul(v0, a))));
  low = madd4(w, here, low);
  lowByU = madd4(t, here, lowByU);
  lowByV = madd4(w, madd4(s3, d, madd4(s2, c, madd4(s1, b, f32x4.mul(s0, a)))), lowByV);
  const e = v128.load(at, 16), f = v128.load(at, 48), g = v128.load(at, 80), h = v128.load(at, 112);
  const there = madd4(v3, h, madd4(v2, g, madd4(v1, f, f32x4.mul(v0, e))));
  high = madd4(w, there, high);
  highByU = madd4(t, there, highByU);
  highByV = madd4(w, madd4(s3, h, madd4(s2, g, madd4(s1, f, f32x4.mul(s0, e)))), highByV);
}

// @ts-ignore: decorator
@inline
function keep(at: usize, lower: v128, higher: v128): void {
  v128.store(at, f64x2.promote_low_f32x4(lower));
  v128.store(at, f64x2.promote_low_f32x4(v128.shuffle<f32>(lower, lower, 2, 3, 2, 3)), 16);
  v128.store(at, f64x2.promote_low_f32x4(higher), 32);
  v128.store(at, f64x2.promote_low_f32x4(v128.shuffle<f32>(higher, higher, 2, 3, 2, 3)), 48);
}

/** By the cubic through −1, 0, 1, 2 and its derivative. */
function readTable(u: f64, v: f64): void {
  const iu = min(max(<i32>Math.floor(u), 1), countU - 3);
  const iv = min(max(<i32>Math.floor(v), 1), countV - 3);
  const a = <f32>(u - <f64>iu);
  const b = <f32>(v - <f64>iv);
  const v0 = f32x4.splat((-b * (b - 1) * (b - 2)) / 6), v1 = f32x4.splat(((b * b - 1) * (b - 2)) / 2);
  const v2 = f32x4.splat((-b * (b + 1) * (b - 2)) / 2), v3 = f32x4.splat((b * (b * b - 1)) / 6);
  const s0 = f32x4.splat(-(3 * b * b - 6 * b + 2) / 6), s1 = f32x4.splat((3 * b * b - 4 * b - 1) / 2);
  const s2 = f32x4.splat(-(3 * b * b - 2 * b - 2) / 2), s3 = f32x4.splat((3 * b * b - 1) / 6);
  const row = <usize>countV << 5;
  const at = table + <usize>(iu - 1) * row + (<usize>(iv - 1) << 5);
  low = lowByU = lowByV = high = highByU = highByV = f32x4.splat(0);
  addRow(at, v0, v1, v2, v3, s0, s1, s2, s3, (-a * (a - 1) * (a - 2)) / 6, -(3 * a * a - 6 * a + 2) / 6);
  addRow(at + row, v0, v1, v2, v3, s0, s1, s2, s3, ((a * a - 1) * (a - 2)) / 2, (3 * a * a - 4 * a - 1) / 2);
  addRow(at + 2 * row, v0, v1, v2, v3, s0, s1, s2, s3, (-a * (a + 1) * (a - 2)) / 2, -(3 * a * a - 2 * a - 2) / 2);
  addRow(at + 3 * row, v0, v1, v2, v3, s0, s1, s2, s3, (a * (a * a - 1)) / 6, (3 * a * a - 1) / 6);
  keep(read, low, high);
  keep(read + 64, lowByU, highByU);
  keep(read + 128, lowByV, highByV);
}

// @ts-ignore: decorator
@inline
function swapped(a: v128): v128 {
  return v128.shuffle<f64>(a, a, 1, 0);
}

/** a · (re + j im), with `re` in both lanes and `im` as −im, im. */
// @ts-ignore: decorator
@inline
function times(a: v128, re: v128, im: v128): v128 {
  return madd(a, re, f64x2.mul(swapped(a), im));
}

// @ts-ignore: decorator
@inline
function turned(im: f64): v128 {
  return f64x2.replace_lane(f64x2.splat(im), 0, -im);
}

// Sums of the waves by way of the soil, re and im.
let ax: v128 = f64x2.splat(0), ay: v128 = f64x2.splat(0), az: v128 = f64x2.splat(0);
let cx: v128 = f64x2.splat(0), cy: v128 = f64x2.splat(0), cz: v128 = f64x2.splat(0);
let gx: v128 = f64x2.splat(0), gy: v128 = f64x2.splat(0), gz: v128 = f64x2.splat(0);

// @ts-ignore: decorator
@inline
function addReflected(
  at: usize,
  dx: f64,
  dy: f64,
  rho: f64,
  k0: f64,
  perRho: f64,
  perHeight: f64,
  waveRe: f64,
  waveIm: f64,
  inverse: f64,
  h: f64,
): void {
  const wRe = f64x2.splat(waveRe), wIm = turned(waveIm);
  const phase = f64x2.neg(turned(k0));
  const less = f64x2.splat(-inverse);
  const cosRay = f64x2.splat(rho * inverse), sinRay = f64x2.splat(h * inverse);
  for (let q: usize = 0; q < 64; q += 16) {
    const t = v128.load(read + q);
    const fall = madd(t, less, f64x2.mul(swapped(t), phase));
    const byRho = madd(fall, cosRay, f64x2.mul(v128.load(read + q, 64), f64x2.splat(perRho)));
    const byHeight = madd(fall, sinRay, f64x2.mul(v128.load(read + q, 128), f64x2.splat(perHeight)));
    v128.store(read + q, times(t, wRe, wIm));
    v128.store(read + q, times(byRho, wRe, wIm), 64);
    v128.store(read + q, times(byHeight, wRe, wIm), 128);
  }
  const g = v128.load(read), v = v128.load(read, 32), o = v128.load(read, 48);
  const gRho = v128.load(read, 64), kRho = v128.load(read, 80), vRho = v128.load(read, 96), oRho = v128.load(read, 112);
  const gUp = v128.load(read, 128), kUp = v128.load(read, 144), oUp = v128.load(read, 176);
  const ux = load<f64>(at, 48), uy = load<f64>(at, 64), uz = load<f64>(at, 80);
  const east = rho > 0 ? dx / rho : 1;
  const north = rho > 0 ? dy / rho : 0;
  const level = ux * east + uy * north;
  const side = ux * north - uy * east;
  const oOverRho = rho > 1e-9 ? f64x2.mul(o, f64x2.splat(1 / rho)) : oRho;
  const across = f64x2.mul(f64x2.splat(uz * east * north), f64x2.sub(oRho, oOverRho));
  const dAxDy = f64x2.sub(f64x2.mul(f64x2.splat(ux * north), gRho), across);
  const dAyDx = f64x2.sub(f64x2.mul(f64x2.splat(uy * east), gRho), across);
  const dAxDz = f64x2.sub(f64x2.mul(f64x2.splat(ux), gUp), f64x2.mul(f64x2.splat(uz * east), oUp));
  const dAyDz = f64x2.sub(f64x2.mul(f64x2.splat(uy), gUp), f64x2.mul(f64x2.splat(uz * north), oUp));
  const dAzDx = madd(f64x2.splat(uz * east), vRho, madd(f64x2.splat(east * level), oRho, f64x2.mul(f64x2.splat(north * side), oOverRho)));
  const dAzDy = madd(f64x2.splat(uz * north), vRho, madd(f64x2.splat(north * level), oRho, f64x2.mul(f64x2.splat(-east * side), oOverRho)));
  const iRe = f64x2.splat(load<f64>(at, 96)), iIm = turned(load<f64>(at, 112));
  const qRe = f64x2.splat(load<f64>(at, 128)), qIm = turned(load<f64>(at, 144));
  ax = f64x2.add(ax, times(f64x2.sub(f64x2.mul(f64x2.splat(ux), g), f64x2.mul(f64x2.splat(uz * east), o)), iRe, iIm));
  ay = f64x2.add(ay, times(f64x2.sub(f64x2.mul(f64x2.splat(uy), g), f64x2.mul(f64x2.splat(uz * north), o)), iRe, iIm));
  az = f64x2.add(az, times(madd(f64x2.splat(uz), v, f64x2.mul(f64x2.splat(level), o)), iRe, iIm));
  cx = f64x2.add(cx, times(f64x2.sub(dAzDy, dAyDz), iRe, iIm));
  cy = f64x2.add(cy, times(f64x2.sub(dAxDz, dAzDx), iRe, iIm));
  cz = f64x2.add(cz, times(f64x2.sub(dAyDx, dAxDy), iRe, iIm));
  gx = f64x2.add(gx, times(f64x2.mul(f64x2.splat(east), kRho), qRe, qIm));
  gy = f64x2.add(gy, times(f64x2.mul(f64x2.splat(north), kRho), qRe, qIm));
  gz = f64x2.add(gz, times(kUp, qRe, qIm));
}

// @ts-ignore: decorator
@inline
function inLane(a: v128, lane: i32): f64 {
  return lane == 0 ? f64x2.extract_lane(a, 0) : f64x2.extract_lane(a, 1);
}

/** The one of two sources that stands in a lane. */
// @ts-ignore: decorator
@inline
function addLane(
  lane: i32,
  at: usize,
  dx: v128,
  dy: v128,
  rho: v128,
  k0: f64,
  u: v128,
  v: v128,
  perRho: v128,
  perHeight: v128,
  waveRe: v128,
  waveIm: v128,
  inverse: v128,
  h: v128,
): void {
  readTable(inLane(u, lane), inLane(v, lane));
  addReflected(
    at + (<usize>lane << 3),
    inLane(dx, lane),
    inLane(dy, lane),
    inLane(rho, lane),
    k0,
    inLane(perRho, lane),
    inLane(perHeight, lane),
    inLane(waveRe, lane),
    inLane(waveIm, lane),
    inLane(inverse, lane),
    inLane(h, lane),
  );
}

// @ts-ignore: decorator
@inline
function addComplex(at: usize, sum: v128): void {
  store<f64>(at, load<f64>(at) + f64x2.extract_lane(sum, 0));
  store<f64>(at, load<f64>(at, 24) + f64x2.extract_lane(sum, 1), 24);
}

/** Waves by way of the soil, added to the same sums. */
export function reflectedWaves(out: usize, list: usize, pairs: i32, px: f64, py: f64, pz: f64, k0: f64): void {
  ax = ay = az = cx = cy = cz = gx = gy = gz = f64x2.splat(0);
  const one = f64x2.splat(1);
  const k = f64x2.splat(k0);
  const least = f64x2.splat(hMin);
  for (let pair = 0, at = list; pair < pairs; pair++, at += 160) {
    const dx = f64x2.sub(f64x2.splat(px), v128.load(at));
    const dy = f64x2.sub(f64x2.splat(py), v128.load(at, 16));
    const h = f64x2.add(f64x2.splat(pz), v128.load(at, 32));
    const rhoSquared = madd(dx, dx, f64x2.mul(dy, dy));
    const rho = f64x2.sqrt(rhoSquared);
    const inverse = f64x2.div(one, f64x2.sqrt(madd(h, h, rhoSquared)));
    const distance = f64x2.div(one, inverse);
    cosSin(f64x2.mul(k, distance));
    const waveRe = f64x2.mul(cosine, inverse);
    const waveIm = f64x2.neg(f64x2.mul(sine, inverse));
    const x = f64x2.mul(k, rho);
    const y = f64x2.mul(k, h);
    const root = f64x2.sqrt(madd(x, x, f64x2.mul(least, least)));
    // asinh(x/hMin) = ln((x + √(x² + hMin²))/hMin).
    const arc = ln(f64x2.div(f64x2.add(x, root), least));
    const u = f64x2.mul(madd(x, f64x2.splat(scaleRho), arc), f64x2.splat(perStepU));
    const climb = madd(f64x2.sub(y, least), f64x2.splat(scaleH), ln(f64x2.div(y, least)));
    const v = f64x2.mul(climb, f64x2.splat(perStepV));
    const perRho = f64x2.mul(f64x2.add(f64x2.div(one, root), f64x2.splat(scaleRho)), f64x2.splat(k0 * perStepU));
    const perHeight = f64x2.mul(f64x2.add(f64x2.div(one, y), f64x2.splat(scaleH)), f64x2.splat(k0 * perStepV));
    addLane(0, at, dx, dy, rho, k0, u, v, perRho, perHeight, waveRe, waveIm, inverse, h);
    addLane(1, at, dx, dy, rho, k0, u, v, perRho, perHeight, waveRe, waveIm, inverse, h);
  }
  addComplex(out, ax);
  addComplex(out + 8, ay);
  addComplex(out + 16, az);
  addComplex(out + 48, cx);
  addComplex(out + 56, cy);
  addComplex(out + 64, cz);
  addComplex(out + 96, gx);
  addComplex(out + 104, gy);
  addComplex(out + 112, gz);
}
