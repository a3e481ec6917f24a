/** The making record as PROV-JSON (W3C member submission of 24 April 2013), out and in again without loss. */
package saddlebar.trace.prov;
