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
 * @param page    which page of it, from 1
 */
public record ArtFile(Path path, String file, String sha256, double widthMm, int page) {
    public ArtFile {
        Objects.requireNonNull(path, "path");
        Require.text("file", file);
        Require.text("sha256", sha256);
        Require.within("widthMm", widthMm, 0.1, 1e6);
        Require.within("page", page, 1, Integer.MAX_VALUE);
    }

    /** The first page. */
    public ArtFile(Path path, String file, String sha256, double widthMm) {
        this(path, file, sha256, widthMm, 1);
    }

    /** Without the place on this machine; the first page is not told, as before there were others. */
    @Override
    public String toString() {
        return "ArtFile[" + sha256 + " " + widthMm + (page > 1 ? " page " + page : "") + "]";
    }
}
