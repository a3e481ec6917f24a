/** A kiln, its load, and a firing simulated: heat, stress, energy, annealing. SI inside; degC, mm, h and MPa in names. No clock, no chance. */
package saddlebar.kiln.fire;
