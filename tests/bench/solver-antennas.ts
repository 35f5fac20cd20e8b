/** Invented antennas for timing: the standard jobs of the field solver. */
import type { Geometry } from '../../src/solver/geometry';

export const range = (fromMHz: number, toMHz: number, points: number): Float64Array =>
  Float64Array.from({ length: points }, (_, i) => 1e6 * (fromMHz + ((toMHz - fromMHz) * i) / (points - 1)));

/** Off-centre-fed wire of 41 m with a coax hanging to 0.1 m (9.9 m of it at a height of 10 m) and one choke. */
export const offCentre = (heightM: number): Geometry => ({
  frequencyMHz: 14.2,
  ground: { kind: 'soil', epsilonR: 13, sigmaSPerM: 0.005 },
  wires: [
    { id: 'short', from: [-13.667, 0, heightM], to: [0, 0, heightM], radiusM: 0.001, conductivitySPerM: 5.8e7 },
    { id: 'long', from: [0, 0, heightM], to: [27.333, 0, heightM], radiusM: 0.001, conductivitySPerM: 5.8e7 },
    { id: 'shield', from: [0, 0, heightM], to: [0, 0, 0.1], radiusM: 0.0025, conductivitySPerM: 5.8e7 },
  ],
  source: { wire: 'long', at: 'from' },
  loads: [{ wire: 'shield', distanceM: 0.5, impedance: { r: 2000, x: 1000 } }],
  probes: [{ id: 'foot', wire: 'shield', fraction: 0.99 }],
});

/** A half-wave with its coax to the ground: about 100 segments at 14 MHz. */
export const oneFrequency: Geometry = {
  frequencyMHz: 14.2,
  ground: { kind: 'soil', epsilonR: 13, sigmaSPerM: 0.005 },
  wires: [
    { id: 'arm1', from: [-5.02, 0, 10], to: [0, 0, 10], radiusM: 0.001, conductivitySPerM: 5.8e7 },
    { id: 'arm2', from: [0, 0, 10], to: [5.02, 0, 10], radiusM: 0.001, conductivitySPerM: 5.8e7 },
    { id: 'drop', from: [0, 0, 10], to: [0, 0, 0.1], radiusM: 0.0025, conductivitySPerM: 5.8e7 },
    { id: 'run', from: [0, 0, 0.1], to: [0, 8, 0.1], radiusM: 0.0025, conductivitySPerM: 5.8e7 },
  ],
  source: { wire: 'arm2', at: 'from' },
  loads: [{ wire: 'drop', distanceM: 0.5, impedance: { r: 2000, x: 1000 } }],
};

/** Next to nothing to solve: what is left is the worker's own start. */
export const shortDipole: Geometry = {
  frequencyMHz: 14.2,
  ground: { kind: 'none' },
  wires: [{ id: 'd', from: [0, 0, 0], to: [0.1, 0, 0], radiusM: 0.001 }],
  source: { wire: 'd', fraction: 0.5 },
};
