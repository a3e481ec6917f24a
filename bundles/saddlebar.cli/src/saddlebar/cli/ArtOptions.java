package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Path;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import saddlebar.artwork.Artwork;
import saddlebar.artwork.ArtworkReaders;
import saddlebar.artwork.ReadSettings;

/** Which artwork, and how large it is in glass. */
public final class ArtOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    @Parameters(index = "0", paramLabel = "ART", description = "The artwork: SVG, PDF, PNG, TIFF or JPEG.")
    private Path art;

    @Option(names = "--layer", paramLabel = "NAME", description = "The layer meant, by its id or label.")
    private String layer;

    @Option(names = "--scale", paramLabel = "1:N", description = "The drawing's scale; 1:1 if not given.")
    private String scale;

    @Option(names = "--width-mm", paramLabel = "W", description = "Real width of the page in mm, instead of a scale.")
    private Double widthMm;

    @Option(names = "--page", paramLabel = "N", description = "Page of a PDF of several, from 1; the first if not given.")
    private Integer page;

    Path file() {
        return art;
    }

    String layer() {
        return layer;
    }

    Artwork read(ArtworkReaders readers) throws IOException {
        return readers.read(art, settings());
    }

    ReadSettings settings() {
        if (page == null) {
            return size();
        }
        if (page < 1) {
            throw wrong("--page takes a whole number from 1, not " + page + ".");
        }
        return size().onPage(page);
    }

    private ReadSettings size() {
        if (scale != null && widthMm != null) {
            throw wrong("--scale and --width-mm say the same in two ways; give one of them.");
        }
        try {
            if (widthMm != null) {
                return ReadSettings.ofWidth(widthMm);
            }
            return scale == null ? ReadSettings.asDrawn() : ReadSettings.scaled(scaleValue());
        } catch (IllegalArgumentException outOfRange) {
            throw wrong(widthMm != null ? "--width-mm takes 0.1 to 1000000 mm, not " + widthMm + "." : "--scale takes 1:0.001 to 1:1000, not " + scale + ".");
        }
    }

    private double scaleValue() {
        String[] parts = scale.split(":", -1);
        try {
            if (parts.length == 2) {
                return Double.parseDouble(parts[1]) / Double.parseDouble(parts[0]);
            }
        } catch (NumberFormatException notTwoNumbers) {
            throw wrong("--scale takes two numbers such as 1:10, not '" + scale + "'.");
        }
        throw wrong("--scale takes two numbers such as 1:10, not '" + scale + "'.");
    }

    private ParameterException wrong(String message) {
        return new ParameterException(command.commandLine(), message);
    }
}
