package saddlebar.stencil.sheet;

import java.io.IOException;

import saddlebar.stencil.BitBands;

/** Where a stencil's bits come from when the sheet needs them; opened once a reading of the sheet, when its first row is reached. */
@FunctionalInterface
public interface BitSource {
    BitBands open() throws IOException;
}
