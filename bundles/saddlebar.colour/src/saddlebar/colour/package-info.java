/**
 * What glass and fired paint look like with light behind them: spectra of transmittance to colours a person and a screen know.
 * <p>Way of a colour: {@link saddlebar.colour.Glass} (measured spectrum, or a plausible one for a measured colour) at its thickness, times what paint
 * and stain let through by their true coverage ({@link saddlebar.colour.PrintedGlass}), under a {@link saddlebar.colour.Light}, gives an {@link
 * saddlebar.colour.Appearance}: XYZ, CIELAB, sRGB. Spectra run from 380 to 780 nm by 5 nm; transmittance and coverage are shares from 0 to 1;
 * thickness is mm of glass and um of fired paint; XYZ has Y = 100 for the bare light.
 * <p>Everything is immutable and reads no clock, chance, locale or model. Methods and sources: docs/algorithms/colour.md.
 */
package saddlebar.colour;
