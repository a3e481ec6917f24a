/**
 * What is done to a whole picture in linear light before it is shown: light spreading round bright glass, and how others see it. For looking only.
 */
package saddlebar.colour.picture;
