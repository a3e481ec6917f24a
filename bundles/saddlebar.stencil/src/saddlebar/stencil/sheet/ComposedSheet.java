package saddlebar.stencil.sheet;

import saddlebar.stencil.BitBands;

/** A sheet as rows of toner, put together while it is read. */
public abstract class ComposedSheet implements BitBands {
    /** Begins to read a sheet from its top. */
    public static ComposedSheet of(SheetPlan plan) {
        throw new UnsupportedOperationException("signature only: in work");
    }
}
