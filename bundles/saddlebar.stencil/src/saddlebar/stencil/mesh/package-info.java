/** The mesh as woven, its beat with a ruling, and banding of the device's grid. Lengths in um for the mesh, mm for what is seen. */
package saddlebar.stencil.mesh;
