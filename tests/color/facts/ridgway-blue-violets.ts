/**
 * Every painted chip called blue-violet in R. Ridgway, "Color Standards and Color Nomenclature", Washington 1912 (public domain), as
 * carried by npm color-name-lists 3.33.2 (list dedicated CC0 1.0). Nothing in lib/color is placed by it.
 */
export const RIDGWAY_BLUE_VIOLETS: readonly (readonly [name: string, hex: string])[] = [
  ["Blue-Violet", "#5e4ec4"],
  ["Blue-Violet Black", "#3d484b"],
  ["Dark Grayish Blue-Violet", "#4d4e75"],
  ["Dark Soft Blue-Violet", "#59588f"],
  ["Deep Blue-Violet", "#514e9f"],
  ["Deep Soft Blue-Violet", "#6766a1"],
  ["Dull Blue-Violet 1", "#5a64aa"],
  ["Dull Blue-Violet 2", "#6a617f"],
  ["Dusky Blue-Violet 1", "#4c4d6b"],
  ["Dusky Blue-Violet 2", "#333550"],
  ["Grayish Blue-Violet 1", "#5d6194"],
  ["Grayish Blue-Violet 2", "#8797ba"],
  ["Light Blue-Violet", "#8993e1"],
  ["Light Grayish Blue-Violet", "#a9b4cc"],
  ["Light Soft Blue-Violet", "#8f95e3"],
  ["Pale Blue-Violet", "#adbaf3"],
  ["Pale Grayish Blue-Violet", "#c2c0cf"],
  ["Pale Soft Blue-Violet", "#abafea"],
  ["Pallid Blue-Violet", "#ced2f4"],
  ["Pallid Soft Blue-Violet", "#c3c7f3"],
  ["Soft Blue-Violet", "#786fba"],
];
