/** What a glass is to the kiln: viscosity, heat, stiffness, expansion. */
package saddlebar.kiln.glass;
