/** From a flaw back to what made it, and forward to all that met the same: PROV relations over the making record. */
package saddlebar.trace.lineage;
