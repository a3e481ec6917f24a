/** Heat through flat layers, and stress in a plate that relaxes. */
package saddlebar.kiln.plate;
