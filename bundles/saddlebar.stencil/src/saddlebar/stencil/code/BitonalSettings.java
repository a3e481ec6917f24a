package saddlebar.stencil.code;

import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * How a 1-bit picture is written to a file. A file says nothing of when or where it was made: same bits and settings, same bytes.
 *
 * @param dpi          device pixels an inch, both ways, 10 to 10,000
 * @param title        one line for a person: commission and sheet; may be empty
 * @param description  how it was made (the recipe), any text; may be empty
 * @param software     name and version of what writes; may be empty
 * @param rowsPerStrip rows of one strip of a TIFF; 0 = all rows in one strip, whose bytes are then those in the PDF
 * @param replace      whether a file that is already there may be replaced
 * @param threads      threads that code, 1 to 256; the bytes do not depend on it
 */
public record BitonalSettings(double dpi, String title, String description, String software, int rowsPerStrip, boolean replace, int threads) {
    public BitonalSettings {
        Require.within("dpi", dpi, 10, 10_000);
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(description, "description");
        Objects.requireNonNull(software, "software");
        Require.within("rowsPerStrip", rowsPerStrip, 0, 1 << 20);
        Require.within("threads", threads, 1, 256);
    }

    /** No words, one strip, nothing replaced, one thread a processor. */
    public static BitonalSettings at(double dpi) {
        return new BitonalSettings(dpi, "", "", "Saddlebar", 0, false, Math.min(256, Runtime.getRuntime().availableProcessors()));
    }

    public BitonalSettings withTitle(String newTitle) {
        return new BitonalSettings(dpi, newTitle, description, software, rowsPerStrip, replace, threads);
    }

    public BitonalSettings withDescription(String newDescription) {
        return new BitonalSettings(dpi, title, newDescription, software, rowsPerStrip, replace, threads);
    }

    public BitonalSettings withSoftware(String newSoftware) {
        return new BitonalSettings(dpi, title, description, newSoftware, rowsPerStrip, replace, threads);
    }

    public BitonalSettings withRowsPerStrip(int rows) {
        return new BitonalSettings(dpi, title, description, software, rows, replace, threads);
    }

    public BitonalSettings replacing(boolean mayReplace) {
        return new BitonalSettings(dpi, title, description, software, rowsPerStrip, mayReplace, threads);
    }

    public BitonalSettings onThreads(int newThreads) {
        return new BitonalSettings(dpi, title, description, software, rowsPerStrip, replace, newThreads);
    }
}
