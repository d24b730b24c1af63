import type { Lab } from "../../../lib/color/lab.ts";

/**
 * CMC(2:1) for the pairs of CIEDE2000_PAIRS in their order, then with standard and sample exchanged. Derived with culori 4.0.2 and an independent
 * implementation of F. J. J. Clarke, R. McDonald, B. Rigg, J. Soc. Dyers Colour. 100:128–132, 1984, which agree to 1e-9;
 * ISO 105-J03's own test data are not open.
 */
export const CMC21: readonly (readonly [difference: number, exchanged: number])[] = [
  [1.7387, 1.7014],
  [2.4966, 2.4155],
  [3.3049, 3.1545],
  [0.8574, 0.8666],
  [0.8833, 0.8936],
  [0.9782, 0.9913],
  [3.5048, 2.8793],
  [2.8793, 3.5048],
  [6.5784, 6.5133],
  [6.5784, 6.5133],
  [6.5784, 6.5133],
  [6.5784, 6.5133],
  [6.6749, 6.663],
  [6.6749, 6.663],
  [6.6749, 6.663],
  [4.6685, 4.729],
  [37.9233, 16.874],
  [38.4758, 17.5636],
  [38.0618, 17.3297],
  [33.3342, 14.3802],
  [1.144, 1.1018],
  [1.006, 0.9494],
  [1.113, 1.1542],
  [1.0534, 1.001],
  [1.4205, 1.3934],
  [1.2474, 1.2792],
  [1.7656, 1.8294],
  [2.025, 2.1197],
  [3.0604, 3.2664],
  [1.7396, 1.7009],
  [1.8891, 1.9994],
  [0.9901, 0.9939],
  [0.9528, 0.9546],
  [1.4278, 1.4551],
];

/**
 * CMC spot values, as published with colour-science (BSD-3-Clause), first colour the standard. Lightness is equal in all three, so that
 * CMC(1:1) and CMC(2:1) agree.
 */
export const CMC_SPOTS: readonly (readonly [Lab, Lab, difference: number])[] = [
  [[100, 21.57210357, 272.2281935], [100, 426.67945353, 72.39590835], 172.70477129],
  [[100, 21.57210357, 272.2281935], [100, 74.05216981, 276.45318193], 20.59732717],
  [[100, 21.57210357, 272.2281935], [100, 8.32281957, -73.58297716], 121.71841479],
];
