package saddlebar.production.facts;

import java.nio.file.Path;
import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * The artwork of a panel.
 *
 * @param path    where it lies on this machine
 * @param file    its path within the commission, for people and records
 * @param sha256  of its bytes
 * @param widthMm real width of its page
 */
public record ArtFile(Path path, String file, String sha256, double widthMm) {
    public ArtFile {
        Objects.requireNonNull(path, "path");
        Require.text("file", file);
        Require.text("sha256", sha256);
        Require.within("widthMm", widthMm, 0.1, 1e6);
    }

    /** Without the place on this machine. */
    @Override
    public String toString() {
        return "ArtFile[" + sha256 + " " + widthMm + "]";
    }
}
