package saddlebar.artwork;

import java.util.Objects;
import java.util.OptionalDouble;

import saddlebar.model.units.Require;

/**
 * How large the artwork is in glass. A drawing made at 1:N is read with scale N; or the width of its page is given, and all is scaled with it.
 *
 * @param widthMm width of the page in real mm, 0.1 to 1e6, replacing what the file says; empty if the file's own size counts
 * @param scale   real mm per drawn mm, 0.001 to 1000; 1 where a width is given
 * @param page    which page of a file of several, from 1; other kinds of file have only the first
 */
public record ReadSettings(OptionalDouble widthMm, double scale, int page) {
    public ReadSettings {
        Objects.requireNonNull(widthMm, "widthMm");
        if (widthMm.isPresent()) {
            Require.within("widthMm", widthMm.getAsDouble(), 0.1, 1e6);
            Require.within("scale beside a width", scale, 1, 1);
        }
        Require.within("scale", scale, 0.001, 1000);
        Require.within("page", page, 1, Integer.MAX_VALUE);
    }

    /** The first page. */
    public ReadSettings(OptionalDouble widthMm, double scale) {
        this(widthMm, scale, 1);
    }

    /** As large as the file says. */
    public static ReadSettings asDrawn() {
        return new ReadSettings(OptionalDouble.empty(), 1);
    }

    /** Drawn at 1:{@code scale}. */
    public static ReadSettings scaled(double scale) {
        return new ReadSettings(OptionalDouble.empty(), scale);
    }

    /** The page is so wide, its height follows. */
    public static ReadSettings ofWidth(double widthMm) {
        return new ReadSettings(OptionalDouble.of(widthMm), 1);
    }

    /** The same size of another page. */
    public ReadSettings onPage(int number) {
        return new ReadSettings(widthMm, scale, number);
    }

    /** Real mm per mm of the file, for a page that the file says is so wide. */
    public double scaleFor(double fileWidthMm) {
        return widthMm.isPresent() ? widthMm.getAsDouble() / fileWidthMm : scale;
    }
}
