/** The tracing bench: from a defect back to what made it, and forward to all that met the same. */
package saddlebar.ui.tracing;
