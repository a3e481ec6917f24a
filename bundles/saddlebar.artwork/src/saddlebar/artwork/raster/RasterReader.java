package saddlebar.artwork.raster;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.osgi.service.component.annotations.Component;

import saddlebar.artwork.Artwork;
import saddlebar.artwork.ArtworkReader;
import saddlebar.artwork.ReadSettings;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Units;

/** Reads PNG, JPEG and TIFF with their resolution; without one, 96 pixels are an inch (the px of CSS). */
@Component(service = ArtworkReader.class)
public final class RasterReader implements ArtworkReader {
    private static final double CSS_DPI = 96;
    private static final double MOST_MM = 1e7;

    @Override
    public String kinds() {
        return "PNG, JPEG and TIFF";
    }

    @Override
    public boolean canRead(String fileName, byte[] head) {
        return PictureFile.isPicture(head);
    }

    @Override
    public Artwork read(Path file, ReadSettings settings) throws IOException {
        String name = String.valueOf(file.getFileName());
        PictureFile picture = PictureFile.of(file, name);
        PictureHead head = picture.head();
        List<Problem> warnings = new ArrayList<>();
        for (String note : picture.notes()) {
            warnings.add(Problem.of("art-picture", Severity.WARNING, name, "the picture: " + note));
        }
        if (!head.saysSize() && settings.widthMm().isEmpty()) {
            warnings.add(Problem.of("art-size", Severity.NOTE, name,
                    String.format(Locale.ROOT, "the picture does not say how large it is; it is read at 96 px an inch, so it is %.1f mm wide",
                            (head.lying() ? head.heightPx() : head.widthPx()) * Units.MM_PER_INCH / CSS_DPI * settings.scale())));
        }
        double dpiX = head.saysSize() ? head.dpiX() : CSS_DPI;
        double dpiY = head.saysSize() ? head.dpiY() : CSS_DPI;
        double mmX = Units.MM_PER_INCH / (head.lying() ? dpiY : dpiX);
        double mmY = Units.MM_PER_INCH / (head.lying() ? dpiX : dpiY);
        double scale = settings.scaleFor(mmX * (head.lying() ? head.heightPx() : head.widthPx()));
        if (scale * mmX * head.widthPx() > MOST_MM || scale * mmY * head.heightPx() > MOST_MM) {
            throw new Refusal(name, "at this scale the picture is more than ten kilometres large", "give its width in mm");
        }
        return new PictureArtwork(file, picture, scale * mmX, scale * mmY, warnings);
    }
}
