/** Screening methods of this bundle. Internal: callers ask {@link saddlebar.stencil.ScreeningMethods}. */
package saddlebar.stencil.method;
